package org.tapeline.stack.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the gateway adds to an answer")
class SecurityHeadersTest {
  private final HttpClient http = HttpClient.newHttpClient();
  private StubService fitting;
  private Gateway gateway;

  @AfterEach
  void stop() {
    gateway.close();
    fitting.close();
  }

  @Test
  @DisplayName("keeps others from framing it, from reading its address, and from keeping it")
  void added() throws Exception {
    start(Optional.empty(), "");
    HttpHeaders headers = get("/fitting/players").headers();
    assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
        .contains("default-src 'self'", "frame-ancestors 'self'", "object-src 'none'");
    assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
    assertThat(headers.firstValue("Referrer-Policy")).contains("same-origin");
    assertThat(headers.firstValue("Cache-Control")).contains("no-store");
    assertThat(headers.firstValue("Strict-Transport-Security")).isEmpty();
  }

  @Test
  @DisplayName("leaves what the service itself says")
  void left() throws Exception {
    start(Optional.empty(), "no-cache");
    assertThat(get("/fitting/field/").headers().allValues("Cache-Control"))
        .containsExactly("no-cache");
  }

  @Test
  @DisplayName("tells browsers that see it by HTTPS to come by nothing else")
  void httpsAlone() throws Exception {
    start(Optional.of(URI.create("https://helmets.example.org")), "");
    assertThat(get("/sign-in").headers().firstValue("Strict-Transport-Security"))
        .contains("max-age=31536000");
  }

  private void start(Optional<URI> publicAddress, String kept) throws IOException {
    fitting =
        StubService.start(
            exchange -> {
              if (!kept.isEmpty()) {
                exchange.getResponseHeaders().set("Cache-Control", kept);
              }
              StubService.answer(exchange, 200, "text/plain", "a page");
            });
    gateway =
        Gateway.start(
            new GatewaySettings(
                "127.0.0.1",
                0,
                Map.of("fitting", fitting.address()),
                publicAddress,
                Optional.empty()));
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    URI address = URI.create("http://localhost:" + gateway.port() + path);
    return http.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
  }
}
