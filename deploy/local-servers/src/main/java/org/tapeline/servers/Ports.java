package org.tapeline.servers;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** Ports on the loopback address. */
public final class Ports {
  private Ports() {}

  /** A port that is free now; somebody else may take it before it is used. */
  public static int free() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  public static boolean taken(int port) {
    try (ServerSocket socket = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
      return !socket.isBound();
    } catch (IOException e) {
      return true;
    }
  }
}
