package org.tapeline.proof.fuzz.slow;

import java.io.IOException;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.proof.fuzz.wire.Answer;
import org.tapeline.proof.fuzz.wire.Call;
import org.tapeline.proof.fuzz.wire.Header;
import org.tapeline.proof.fuzz.wire.Wire;

/**
 * Many callers at once who send a byte now and then and never come to an end: half of them in the
 * head of a request, half in its body.
 */
public final class SlowFlood {
  private static final int CALLERS = 400;
  private static final Duration BETWEEN = Duration.ofMillis(500);

  private final String host;
  private final Duration patience;

  public SlowFlood(String host, Duration patience) {
    this.host = host;
    this.patience = patience;
  }

  /**
   * What came of it.
   *
   * @param served answers that others got meanwhile, all with the expected status
   * @param missed those that they did not get
   * @param ended how many of the slow heads the server has ended
   * @param heads how many there were
   */
  public record Outcome(int served, int missed, int ended, int heads) {}

  /**
   * @param path that a body can be sent to, and that answers GET with 200
   * @param login value of the Authorization header
   * @param length how long it goes on at most; it ends when all slow heads were ended
   */
  public Outcome run(int port, String path, String login, Duration length)
      throws IOException, InterruptedException {
    List<Socket> heads = new ArrayList<>();
    List<Socket> bodies = new ArrayList<>();
    try {
      for (int i = 0; i < CALLERS; i++) {
        Socket socket = new Socket(host, port);
        boolean head = i % 2 == 0;
        (head ? heads : bodies).add(socket);
        send(socket, "POST " + path + " HTTP/1.1\r\nHost: x\r\nX-Slow: ");
        if (!head) {
          send(socket, "1\r\nContent-Type: text/csv\r\nContent-Length: 5000000\r\n\r\n");
        }
      }
      return watch(port, path, login, length, heads, bodies);
    } finally {
      for (Socket socket : heads) {
        socket.close();
      }
      for (Socket socket : bodies) {
        socket.close();
      }
    }
  }

  private Outcome watch(
      int port, String path, String login, Duration length, List<Socket> heads, List<Socket> bodies)
      throws InterruptedException {
    int served = 0;
    int missed = 0;
    Instant until = Instant.now().plus(length);
    long open = heads.size();
    while (Instant.now().isBefore(until) && open > 0) {
      open = heads.stream().filter(socket -> send(socket, "x")).count();
      bodies.forEach(socket -> send(socket, "x"));
      if (answered(port, path, login)) {
        served++;
      } else {
        missed++;
      }
      Thread.sleep(BETWEEN);
    }
    return new Outcome(served, missed, heads.size() - (int) open, heads.size());
  }

  private boolean answered(int port, String path, String login) {
    Call call =
        new Call(port, "GET", path, List.of(new Header("Authorization", login)), new byte[0]);
    try {
      Answer answer = new Wire(host, patience).send(call);
      return answer.whole() && answer.status() == 200;
    } catch (IOException e) {
      return false;
    }
  }

  /** False when the other side has ended the connection. */
  private static boolean send(Socket socket, String text) {
    try {
      socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
      socket.setSoTimeout(1);
      return socket.getInputStream().read() >= 0;
    } catch (SocketTimeoutException e) {
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
