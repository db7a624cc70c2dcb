package org.tapeline.stack.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpHandler;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.servers.Ports;

class GatewayTest {
  private final HttpClient http = HttpClient.newHttpClient();
  private StubService fitting;
  private Gateway gateway;

  @AfterEach
  void stop() {
    if (gateway != null) {
      gateway.close();
    }
    if (fitting != null) {
      fitting.close();
    }
  }

  @Test
  @DisplayName("A request reaches its service with path, query and body, and the answer comes back")
  void forwards() throws Exception {
    start(
        exchange -> {
          String body =
              new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
          StubService.answer(exchange, 201, "text/plain", "got " + body);
        });
    HttpResponse<String> answer =
        http.send(
            request("/fitting/api/sessions?field=NORTH%20A")
                .POST(HttpRequest.BodyPublishers.ofString("three readings"))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    assertThat(answer.statusCode()).isEqualTo(201);
    assertThat(answer.body()).isEqualTo("got three readings");
    assertThat(fitting.asked).containsExactly("POST /fitting/api/sessions?field=NORTH%20A");
  }

  @Test
  @DisplayName(
      "A service with a start page of its own is reached by its address, another leads home")
  void startPages() throws Exception {
    start(exchange -> StubService.answer(exchange, 200, "text/html", "what needs doing"));
    assertThat(send(request("/inventory/")).body()).isEqualTo("what needs doing");
    assertThat(send(request("/inventory")).headers().firstValue("Location"))
        .contains("/inventory/");
    assertThat(send(request("/fitting/")).headers().firstValue("Location")).contains("/");
    assertThat(fitting.asked).containsExactly("GET /inventory/");
  }

  @Test
  @DisplayName("The service hears the gateway's address, not one that the caller claims")
  void saysWhereItIsSeen() throws Exception {
    start(exchange -> StubService.answer(exchange, 200, "text/plain", ""));
    send(
        request("/fitting/players")
            .header("X-Forwarded-For", "203.0.113.9")
            .header("X-Forwarded-Proto", "https")
            .header("X-Forwarded-Prefix", "/elsewhere")
            .header("Forwarded", "host=elsewhere.example"));
    assertThat(fitting.headers)
        .containsEntry("X-forwarded-host", List.of("localhost:" + gateway.port()))
        .containsEntry("X-forwarded-proto", List.of("http"))
        .containsEntry("X-forwarded-for", List.of("127.0.0.1"))
        .doesNotContainKeys("X-forwarded-prefix", "Forwarded");
  }

  @Test
  @DisplayName("A request that names another host in its first line still reaches only the service")
  void reachesNoOtherHost() throws Exception {
    start(exchange -> StubService.answer(exchange, 200, "text/plain", "ours"));
    try (StubService other =
            StubService.start(
                exchange -> StubService.answer(exchange, 200, "text/plain", "theirs"));
        Socket socket = new Socket("127.0.0.1", gateway.port())) {
      String request =
          "GET %s/fitting/x HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n\r\n"
              .formatted(other.address(), other.address().replace("http://", ""));
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      String answer =
          new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
      assertThat(answer).doesNotContain("theirs");
      assertThat(other.asked).isEmpty();
    }
  }

  @ParameterizedTest
  @DisplayName(
      "Health, metrics and what else is for operators cannot be reached, however it is written")
  @ValueSource(
      strings = {
        "/fitting/q",
        "/fitting/q/",
        "/fitting/q/metrics",
        "/fitting/q/health/ready",
        "/fitting/q/openapi?format=json",
        "/fitting//q/metrics",
        "//fitting/q/metrics",
        "/fitting/%71/metrics",
        "/fitting/./q/metrics",
        "/fitting/api/../q/metrics",
        "/fitting/api/%2e%2e/q/metrics"
      })
  void keepsWhatIsForOperators(String path) throws Exception {
    start(exchange -> StubService.answer(exchange, 200, "text/plain", "figures"));
    try (Socket socket = new Socket("127.0.0.1", gateway.port())) {
      String request = "GET %s HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n".formatted(path);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1))
          .startsWith("HTTP/1.1 404");
    }
    assertThat(fitting.asked).isEmpty();
  }

  @Test
  @DisplayName("An event of a stream arrives before the stream goes on")
  void passesStreamsAsTheyCome() throws Exception {
    CountDownLatch firstWasRead = new CountDownLatch(1);
    start(
        exchange -> {
          exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
          exchange.sendResponseHeaders(200, 0);
          try (var out = exchange.getResponseBody()) {
            out.write("data: one\n\n".getBytes(StandardCharsets.UTF_8));
            out.flush();
            await(firstWasRead);
            out.write("data: two\n\n".getBytes(StandardCharsets.UTF_8));
          }
        });
    HttpResponse<InputStream> stream =
        http.send(
            request("/fitting/sideline/live").build(), HttpResponse.BodyHandlers.ofInputStream());
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(stream.body(), StandardCharsets.UTF_8))) {
      assertThat(lines.readLine()).isEqualTo("data: one");
      firstWasRead.countDown();
      assertThat(lines.readLine()).isEmpty();
      assertThat(lines.readLine()).isEqualTo("data: two");
    }
  }

  @Test
  @DisplayName("A program is told in a problem that a service is away, a person on a page")
  void saysThatAServiceIsAway() throws Exception {
    startWith("http://127.0.0.1:" + Ports.free());
    HttpResponse<String> problem = send(request("/fitting/api/x").header("Accept", "*/*"));
    assertThat(problem.statusCode()).isEqualTo(503);
    assertThat(problem.headers().firstValue("Content-Type")).contains("application/problem+json");
    assertThat(problem.body()).contains("\"status\":503", "The fitting service does not answer");
    HttpResponse<String> page = send(request("/fitting/x").header("Accept", "text/html"));
    assertThat(page.statusCode()).isEqualTo(503);
    assertThat(page.body()).contains("<h1>This part of Tapeline does not answer just now</h1>");
  }

  @Test
  @DisplayName("A browser keeps the stylesheet until it is another one")
  void assetsCarryATag() throws Exception {
    startWith("http://127.0.0.1:1");
    HttpResponse<String> first = send(request("/assets/tapeline.css"));
    String tag = first.headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> again = send(request("/assets/tapeline.css").header("If-None-Match", tag));
    assertThat(first.statusCode()).isEqualTo(200);
    assertThat(again.statusCode()).isEqualTo(304);
    for (String script : List.of("htmx.min.js", "htmx-ext-sse.js", "tapeline.svg")) {
      assertThat(send(request("/assets/" + script)).statusCode()).isEqualTo(200);
    }
  }

  @Test
  @DisplayName("Signing out takes the cookie away and shows the sign-in page")
  void signsOut() throws Exception {
    startWith("http://127.0.0.1:1");
    HttpResponse<String> out = send(request("/sign-out"));
    assertThat(out.headers().firstValue("Location")).contains("/sign-in");
    assertThat(out.headers().firstValue("Set-Cookie").orElseThrow())
        .startsWith("quarkus-credential=;")
        .contains("Max-Age=0", "Path=/");
  }

  @Test
  @DisplayName("An address that leads nowhere has a page that says so")
  void hasAPageForNothing() throws Exception {
    startWith("http://127.0.0.1:1");
    HttpResponse<String> nothing = send(request("/nothing"));
    assertThat(nothing.statusCode()).isEqualTo(404);
    assertThat(nothing.body()).contains("There is nothing at this address");
  }

  private void start(HttpHandler answer) throws IOException {
    fitting = StubService.start(answer);
    startWith(fitting.address());
  }

  private void startWith(String address) throws IOException {
    gateway =
        Gateway.start(
            new GatewaySettings(
                "127.0.0.1",
                0,
                Map.of("fitting", address, "inventory", address),
                Optional.empty(),
                Optional.empty()));
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://localhost:" + gateway.port() + path));
  }

  private HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private static void await(CountDownLatch latch) throws IOException {
    try {
      if (!latch.await(10, TimeUnit.SECONDS)) {
        throw new IOException("The first event never arrived");
      }
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }
}
