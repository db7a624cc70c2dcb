package org.tapeline.stack.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The gateway")
class SlowCallersTest {
  private static final Duration SOON = Duration.ofMillis(300);
  private static final Duration LATE = Duration.ofMinutes(10);

  private final List<AutoCloseable> open = new ArrayList<>();
  private StubService fitting;

  @BeforeEach
  void start() throws IOException {
    fitting =
        StubService.start(
            exchange -> {
              exchange.getRequestBody().readAllBytes();
              StubService.answer(exchange, 200, "text/plain", "well");
            });
    open.add(fitting);
  }

  @AfterEach
  void stop() throws Exception {
    for (AutoCloseable each : open.reversed()) {
      each.close();
    }
  }

  @Test
  @DisplayName("ends a connection on which a request's head never ends, though a byte comes often")
  void endlessHead() throws Exception {
    Socket slow = connect(gateway(SOON, LATE, LATE));
    slow.getOutputStream().write(ascii("GET /fitting/players HTTP/1.1\r\nHost: x\r\n"));
    assertThat(endsWhileBytesCome(slow)).isTrue();
    assertThat(fitting.asked).isEmpty();
  }

  @Test
  @DisplayName("ends a connection on which a request's body never ends")
  void endlessBody() throws Exception {
    Socket slow = connect(gateway(LATE, LATE, SOON));
    String head =
        "POST /fitting/api/sessions HTTP/1.1\r\nHost: x\r\nContent-Length: 100000\r\n\r\n";
    slow.getOutputStream().write(ascii(head));
    assertThat(endsWhileBytesCome(slow)).isTrue();
  }

  @Test
  @DisplayName("ends a connection that says no more after an answer")
  void nothingMore() throws Exception {
    Socket slow = connect(gateway(LATE, SOON, LATE));
    slow.getOutputStream().write(ascii("GET /fitting/players HTTP/1.1\r\nHost: x\r\n\r\n"));
    slow.setSoTimeout(20_000);
    String all = new String(slow.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
    assertThat(all).startsWith("HTTP/1.1 200").endsWith("well");
  }

  @Test
  @DisplayName("serves others while two hundred callers dawdle")
  void servesOthers() throws Exception {
    Gateway gateway = gateway(LATE, LATE, LATE);
    for (int i = 0; i < 200; i++) {
      Socket slow = connect(gateway);
      slow.getOutputStream().write(ascii("POST /fitting/x HTTP/1.1\r\nHost: x\r\nContent-"));
    }
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + gateway.port() + "/fitting/x"))
            .timeout(Duration.ofSeconds(20))
            .build();
    try (HttpClient http = HttpClient.newHttpClient()) {
      assertThat(http.send(request, HttpResponse.BodyHandlers.ofString()).body()).isEqualTo("well");
    }
  }

  /** True once the gateway has closed it; every byte that is sent meanwhile is one of many. */
  private static boolean endsWhileBytesCome(Socket slow) {
    Awaitility.await()
        .atMost(Duration.ofSeconds(20))
        .pollInterval(Duration.ofMillis(50))
        .until(() -> ended(slow));
    return true;
  }

  private static boolean ended(Socket slow) throws IOException {
    try {
      OutputStream out = slow.getOutputStream();
      out.write('x');
      out.flush();
      slow.setSoTimeout(1);
      InputStream in = slow.getInputStream();
      return in.read() < 0;
    } catch (SocketTimeoutException e) {
      return false;
    } catch (SocketException e) {
      return true;
    }
  }

  private Gateway gateway(Duration firstHead, Duration nextHead, Duration body) throws IOException {
    Gateway gateway =
        Gateway.start(
            new GatewaySettings(
                "127.0.0.1",
                0,
                Map.of("fitting", fitting.address()),
                Optional.empty(),
                Optional.empty()),
            new SlowCallers.Limits(firstHead, nextHead, body));
    open.add(gateway);
    return gateway;
  }

  private Socket connect(Gateway gateway) throws IOException {
    Socket socket = new Socket("127.0.0.1", gateway.port());
    open.add(socket);
    return socket;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
