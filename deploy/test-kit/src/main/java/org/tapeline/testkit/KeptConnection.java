package org.tapeline.testkit;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/**
 * One connection on which one thing is asked after the other, as a gateway does it. Reads heads
 * only: what has a body has to be the last thing.
 */
public final class KeptConnection implements Closeable {
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final Socket socket;
  private final BufferedReader in;
  private final String login;

  /**
   * @param user a user of the demo
   * @throws IOException when nobody listens at the port
   */
  public KeptConnection(int port, String user) throws IOException {
    String pair = user + ":larkfield";
    this.login = Base64.getEncoder().encodeToString(pair.getBytes(StandardCharsets.UTF_8));
    this.socket = new Socket("127.0.0.1", port);
    socket.setSoTimeout((int) PATIENCE.toMillis());
    this.in =
        new BufferedReader(
            new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));
  }

  /**
   * The lines of the answer's head, the first one its status, in small letters.
   *
   * @throws IOException when it does not come in 20 s
   */
  public List<String> ask(String method, String path) throws IOException {
    String head =
        "%s %s HTTP/1.1\r\nHost: localhost\r\nAuthorization: Basic %s\r\nAccept: */*\r\n\r\n"
            .formatted(method, path, login);
    socket.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
    List<String> lines = new ArrayList<>();
    String line = in.readLine();
    while (line != null && !line.isEmpty()) {
      lines.add(line.toLowerCase(Locale.ROOT));
      line = in.readLine();
    }
    return lines;
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
