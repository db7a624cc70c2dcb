package org.tapeline.stack.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tapeline.stack.mailbox.Mailbox;

class TextPagesTest {
  @TempDir Path directory;
  private final HttpClient http = HttpClient.newHttpClient();
  private Gateway gateway;

  @BeforeEach
  void start() throws Exception {
    gateway =
        Gateway.start(
            new GatewaySettings(
                "127.0.0.1", 0, Map.of(), Optional.empty(), Optional.of(new Mailbox(directory))));
  }

  @AfterEach
  void stop() {
    gateway.close();
  }

  @Test
  @DisplayName("A text message is shown, once for each key, and as text only")
  void shows() throws Exception {
    String message = "{\"to\":\"+15005550101\",\"body\":\"Do not wear <b>Mia's</b> helmet\"}";
    assertThat(post("n-1", message).statusCode()).isEqualTo(202);
    assertThat(post("n-1", message).body()).isEqualTo("{\"id\":\"n-1\"}");
    String page = http.send(request().GET().build(), HttpResponse.BodyHandlers.ofString()).body();
    assertThat(page).containsOnlyOnce("+15005550101").doesNotContain("<b>Mia");
  }

  @Test
  @DisplayName("What is no message, or has no key, is refused")
  void refused() throws Exception {
    assertThat(post("../../x", "{\"to\":\"a\"}").statusCode()).isEqualTo(400);
    assertThat(post("n-2", "no message").statusCode()).isEqualTo(400);
  }

  private HttpRequest.Builder request() {
    return HttpRequest.newBuilder(
        URI.create("http://127.0.0.1:" + gateway.port() + "/mailbox/texts"));
  }

  private HttpResponse<String> post(String key, String body) throws Exception {
    return http.send(
        request()
            .header("Idempotency-Key", key)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }
}
