package org.tapeline.stack.mailbox;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import org.subethamail.smtp.RejectException;
import org.subethamail.smtp.server.SMTPServer;

/** An SMTP server that takes every message and delivers none. */
public final class MailCatcher implements AutoCloseable {
  private static final int LARGEST_MESSAGE = 10 * 1024 * 1024;

  private final SMTPServer server;

  private MailCatcher(SMTPServer server) {
    this.server = server;
  }

  /** Runs alone, for the container set: {@code TAPELINE_MAIL_DIR}, {@code TAPELINE_SMTP_PORT}. */
  public static void main(String[] args) throws IOException {
    Mailbox mailbox = new Mailbox(Path.of(System.getenv().getOrDefault("TAPELINE_MAIL_DIR", ".")));
    int port = Integer.parseInt(System.getenv().getOrDefault("TAPELINE_SMTP_PORT", "1025"));
    MailCatcher catcher = start("0.0.0.0", port, mailbox);
    System.out.println("The mail catcher listens on port " + catcher.port());
    Runtime.getRuntime().addShutdownHook(new Thread(catcher::close));
  }

  public static MailCatcher start(String host, int port, Mailbox mailbox)
      throws UnknownHostException {
    SMTPServer server =
        SMTPServer.port(port)
            .bindAddress(InetAddress.getByName(host))
            .softwareName("Tapeline mail catcher")
            .maxMessageSize(LARGEST_MESSAGE)
            .messageHandler(
                (context, from, to, data) -> {
                  try {
                    mailbox.store(new ByteArrayInputStream(data));
                  } catch (IOException e) {
                    throw new RejectException(
                        451, "The message could not be stored: " + e.getMessage());
                  }
                })
            .build();
    server.start();
    return new MailCatcher(server);
  }

  public int port() {
    return server.getPortAllocated();
  }

  @Override
  public void close() {
    server.stop();
  }
}
