package org.tapeline.acceptance;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The line between a phone and Tapeline, that can be cut at any point, answers on the way too. */
final class CutLine implements AutoCloseable {

  /** How good the line is. */
  enum Signal {
    GOOD,
    /** What is asked arrives, and the answer is lost: a server that dies while it answers. */
    ANSWERS_LOST,
    NONE
  }

  private final ServerSocket listening;
  private final URI behind;
  private final Set<Socket> open = ConcurrentHashMap.newKeySet();
  private volatile Signal signal = Signal.GOOD;

  CutLine(String address) {
    behind = URI.create(address);
    try {
      listening = new ServerSocket(0, 50, InetAddress.getByName("localhost"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Thread.ofVirtual().start(this::listen);
  }

  String address() {
    return "http://localhost:" + listening.getLocalPort();
  }

  void is(Signal now) {
    signal = now;
    if (now != Signal.GOOD) {
      open.forEach(CutLine::hangUp);
    }
  }

  private void listen() {
    while (!listening.isClosed()) {
      try {
        Socket phone = listening.accept();
        if (signal == Signal.NONE) {
          hangUp(phone);
        } else {
          connect(phone);
        }
      } catch (IOException e) {
        // The phone has gone, or the line is closed.
      }
    }
  }

  private void connect(Socket phone) throws IOException {
    Socket server = new Socket(behind.getHost(), behind.getPort());
    open.add(phone);
    open.add(server);
    Thread.ofVirtual().start(() -> pass(phone, server, false));
    Thread.ofVirtual().start(() -> pass(server, phone, true));
  }

  private void pass(Socket from, Socket to, boolean answer) {
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      byte[] bytes = new byte[8192];
      for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
        if (answer && signal != Signal.GOOD) {
          return;
        }
        out.write(bytes, 0, n);
      }
    } catch (IOException e) {
      // Cut.
    } finally {
      open.remove(from);
      open.remove(to);
    }
  }

  private static void hangUp(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    is(Signal.NONE);
    try {
      listening.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
