package org.tapeline.stack.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What is not even a request is refused in words:")
class RefusalTest {
  private Gateway gateway;

  @BeforeEach
  void start() throws IOException {
    gateway =
        Gateway.start(
            new GatewaySettings("127.0.0.1", 0, Map.of(), Optional.empty(), Optional.empty()));
  }

  @AfterEach
  void stop() {
    gateway.close();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "a broken escape, /fitting/%zz, Accept: */*, 400",
    "a name of a header with a blank, /fitting/x, Bad Name: x, 400",
    "a length that is none, /fitting/x, Content-Length: -1, 400"
  })
  void problems(String what, String path, String header, int status) throws IOException {
    assertThat(answer("GET " + path + " HTTP/1.1\r\nHost: x\r\n" + header + "\r\n\r\n"))
        .contains(" " + status + " ")
        .contains("application/problem+json", "\"status\":" + status, "\"detail\":\"The address");
  }

  @Test
  @DisplayName("an address and headers that are too long")
  void tooLong() throws IOException {
    assertThat(answer("GET /" + "x".repeat(10_000) + " HTTP/1.1\r\nHost: x\r\n\r\n"))
        .contains(" 414 ")
        .contains("application/problem+json", "too long");
    assertThat(answer("GET / HTTP/1.1\r\nHost: x\r\nCookie: " + "x".repeat(40_000) + "\r\n\r\n"))
        .contains(" 431 ")
        .contains("application/problem+json", "sign in again");
  }

  @Test
  @DisplayName("to a browser by a page")
  void pages() throws IOException {
    assertThat(answer("GET /fitting/%zz HTTP/1.1\r\nHost: x\r\nAccept: text/html\r\n\r\n"))
        .startsWith("HTTP/1.1 400")
        .contains("text/html", "<h1>Not understood</h1>");
  }

  @Test
  @DisplayName("and so is a body of which a service has enough")
  void enough() throws IOException {
    try (StubService fitting =
            StubService.start(exchange -> StubService.answer(exchange, 413, "text/plain", ""));
        Gateway before =
            Gateway.start(
                new GatewaySettings(
                    "127.0.0.1",
                    0,
                    Map.of("fitting", fitting.address()),
                    Optional.empty(),
                    Optional.empty()))) {
      assertThat(answer(before, "POST /fitting/x HTTP/1.1\r\nHost: x\r\nContent-Length: 0\r\n\r\n"))
          .contains(" 413 ", "application/problem+json", "Send it in parts.");
    }
  }

  private String answer(String request) throws IOException {
    return answer(gateway, request);
  }

  private static String answer(Gateway gateway, String request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", gateway.port())) {
      socket.setSoTimeout(20_000);
      byte[] bytes = request.getBytes(StandardCharsets.ISO_8859_1);
      int end = bytes.length - 2;
      socket.getOutputStream().write(bytes, 0, end);
      socket
          .getOutputStream()
          .write("Connection: close\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
