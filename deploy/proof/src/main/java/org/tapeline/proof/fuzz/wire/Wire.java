package org.tapeline.proof.fuzz.wire;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sends calls, each on a connection of its own. No library stands between, since a library would
 * refuse to send most of what is tried here.
 */
public final class Wire {
  private static final int CONNECT_MILLIS = 5_000;
  private static final int MOST = 64 * 1024 * 1024;
  private static final int MOST_OF_A_HEAD = 128 * 1024;
  private static final byte[] END_OF_HEAD = "\r\n\r\n".getBytes(StandardCharsets.US_ASCII);

  private final String host;
  private final Duration patience;

  /**
   * @param patience how long a whole answer may take
   */
  public Wire(String host, Duration patience) {
    this.host = host;
    this.patience = patience;
  }

  /**
   * @throws IOException when nobody listens there
   */
  public Answer send(Call call) throws IOException {
    long begun = System.nanoTime();
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(host, call.port()), CONNECT_MILLIS);
      write(socket, call);
      ByteArrayOutputStream got = new ByteArrayOutputStream();
      boolean whole = read(socket, got, begun);
      Duration took = Duration.ofNanos(System.nanoTime() - begun);
      return answer(got.toByteArray(), took, whole);
    }
  }

  /** A server may answer before it has read everything, and stop reading. */
  private static void write(Socket socket, Call call) {
    try {
      OutputStream out = socket.getOutputStream();
      out.write(call.head());
      out.write(call.body());
      out.flush();
    } catch (IOException e) {
      // What it said is read next.
    }
  }

  /** True when the end came in time, or a stream of events began. */
  private boolean read(Socket socket, ByteArrayOutputStream got, long begun) {
    byte[] buffer = new byte[16 * 1024];
    try {
      InputStream in = socket.getInputStream();
      while (got.size() < MOST) {
        long left = patience.toMillis() - (System.nanoTime() - begun) / 1_000_000;
        if (left <= 0) {
          return false;
        }
        socket.setSoTimeout((int) left);
        int n = in.read(buffer);
        if (n < 0) {
          return true;
        }
        got.write(buffer, 0, n);
        if (got.size() < MOST_OF_A_HEAD && streams(got)) {
          return true;
        }
      }
      return true;
    } catch (SocketTimeoutException e) {
      return false;
    } catch (IOException e) {
      return true;
    }
  }

  private static boolean streams(ByteArrayOutputStream got) {
    String head = got.toString(StandardCharsets.ISO_8859_1).toLowerCase(java.util.Locale.ROOT);
    return head.contains("content-type: text/event-stream") && head.contains("\r\n\r\n");
  }

  static Answer answer(byte[] bytes, Duration took, boolean whole) {
    int end = indexOf(bytes, END_OF_HEAD, 0);
    if (end < 0) {
      return new Answer(0, Map.of(), bytes, took, whole);
    }
    String[] lines = new String(bytes, 0, end, StandardCharsets.ISO_8859_1).split("\r\n");
    Map<String, String> headers = new TreeMap<>();
    for (int i = 1; i < lines.length; i++) {
      int colon = lines[i].indexOf(':');
      if (colon > 0) {
        headers.put(
            lines[i].substring(0, colon).strip().toLowerCase(java.util.Locale.ROOT),
            lines[i].substring(colon + 1).strip());
      }
    }
    int from = end + END_OF_HEAD.length;
    boolean chunked = headers.getOrDefault("transfer-encoding", "").contains("chunked");
    byte[] body = chunked ? unchunked(bytes, from) : rest(bytes, from);
    String status = lines[0].replaceFirst("^HTTP/1\\.[01] ([0-9]{3}).*$", "$1");
    int code = status.matches("[0-9]{3}") ? Integer.parseInt(status) : 0;
    return new Answer(code, headers, body, took, whole);
  }

  private static byte[] rest(byte[] bytes, int from) {
    return java.util.Arrays.copyOfRange(bytes, from, bytes.length);
  }

  private static byte[] unchunked(byte[] bytes, int from) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    int at = from;
    while (at < bytes.length) {
      int eol = indexOf(bytes, new byte[] {'\r', '\n'}, at);
      if (eol < 0) {
        break;
      }
      String size = new String(bytes, at, eol - at, StandardCharsets.US_ASCII).strip();
      int length = size.matches("[0-9a-fA-F]{1,7}") ? Integer.parseInt(size, 16) : 0;
      if (length == 0) {
        break;
      }
      body.write(bytes, eol + 2, Math.min(length, bytes.length - eol - 2));
      at = eol + 2 + length + 2;
    }
    return body.toByteArray();
  }

  private static int indexOf(byte[] bytes, byte[] wanted, int from) {
    for (int i = from; i <= bytes.length - wanted.length; i++) {
      if (java.util.Arrays.equals(bytes, i, i + wanted.length, wanted, 0, wanted.length)) {
        return i;
      }
    }
    return -1;
  }
}
