package org.tapeline.notify.whole;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** A real SMTP server on a port of its own, which a test may take down and up again. */
public final class SmtpServer implements QuarkusTestResourceLifecycleManager {
  private static ServerSetup setup;
  private static GreenMail server;

  @Override
  public Map<String, String> start() {
    int port = freePort();
    setup = new ServerSetup(port, "127.0.0.1", ServerSetup.PROTOCOL_SMTP);
    up();
    return Map.of("tapeline.mail.host", "127.0.0.1", "tapeline.mail.port", Integer.toString(port));
  }

  @Override
  public void stop() {
    down();
  }

  /** Starts it, with an empty mailbox, unless it runs. */
  static void up() {
    if (server == null || !server.isRunning()) {
      server = new GreenMail(setup);
      server.start();
    }
  }

  static void down() {
    server.stop();
  }

  /** What has come in for an address since the server was last started. */
  static List<MimeMessage> to(String address) {
    return Arrays.stream(server.getReceivedMessages()).filter(m -> isTo(m, address)).toList();
  }

  private static boolean isTo(MimeMessage message, String address) {
    try {
      return Arrays.toString(message.getRecipients(Message.RecipientType.TO)).contains(address);
    } catch (MessagingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static int freePort() {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
