package org.tapeline.proof.fuzz.wire;

import java.io.ByteArrayOutputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One HTTP request, byte by byte as it goes out.
 *
 * @param target path and query, already encoded, rightly or wrongly
 * @param port of the gateway, or of a service behind it
 */
public record Call(int port, String method, String target, List<Header> headers, byte[] body) {
  private static final int SHOWN = 600;

  public Call {
    headers = List.copyOf(headers);
  }

  byte[] head() {
    StringBuilder head = new StringBuilder();
    head.append(method).append(' ').append(target).append(" HTTP/1.1\r\n");
    if (headers.stream().noneMatch(h -> h.name().equalsIgnoreCase("Host"))) {
      head.append("Host: localhost:").append(port).append("\r\n");
    }
    head.append("Connection: close\r\n");
    headers.forEach(h -> head.append(h.name()).append(": ").append(h.value()).append("\r\n"));
    if (body.length > 0 || !method.matches("GET|HEAD|DELETE")) {
      head.append("Content-Length: ").append(body.length).append("\r\n");
    }
    return head.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  /**
   * A line for a shell that sends the same again, with a command id of its own where it has one.
   */
  public String repeat() {
    String said =
        headers.stream()
            .map(h -> " -H " + quoted(h.name() + ": " + h.value()))
            .collect(Collectors.joining());
    String sent = body.length == 0 ? "" : " --data-binary " + quoted(body);
    return "curl -i --path-as-is -X "
        + method
        + said
        + sent
        + " "
        + quoted("http://localhost:" + port + target);
  }

  /** All that it says, address, headers and body, as text. */
  public String said() {
    String address =
        URLDecoder.decode(target.replaceAll("%(?![0-9a-fA-F]{2})", "%25"), StandardCharsets.UTF_8);
    return address + new String(body, StandardCharsets.UTF_8) + headers;
  }

  private static String quoted(String text) {
    return quoted(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  /** In the shell's {@code $'...'}, with every byte that is no plain letter written as a number. */
  private static String quoted(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes("$'".getBytes(StandardCharsets.US_ASCII));
    for (int i = 0; i < Math.min(bytes.length, SHOWN); i++) {
      byte b = bytes[i];
      boolean plain = b >= ' ' && b < 127 && b != '\'' && b != '\\';
      out.writeBytes(
          plain
              ? new byte[] {b}
              : String.format("\\x%02x", b & 0xff).getBytes(StandardCharsets.US_ASCII));
    }
    out.write('\'');
    String end = bytes.length > SHOWN ? "[and " + (bytes.length - SHOWN) + " bytes more]" : "";
    return out.toString(StandardCharsets.US_ASCII) + end;
  }
}
