package org.tapeline.notify.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.NoSuchProviderException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.MimeMessage;
import java.util.Properties;
import org.tapeline.notify.channel.Channel;
import org.tapeline.notify.channel.Outgoing;
import org.tapeline.notify.channel.SendOutcome;

/**
 * One connection to the mail server, kept open between mails; for one thread. Its outcome says
 * whether another try makes sense, see {@link SmtpAnswers}.
 */
final class SmtpConnection implements Channel.Connection {
  private final MailSettings settings;
  private final MailComposer composer;
  private final Session session;
  private Transport transport;

  SmtpConnection(MailSettings settings, MailComposer composer) {
    this.settings = settings;
    this.composer = composer;
    this.session = Session.getInstance(properties(settings));
  }

  @Override
  public SendOutcome send(Outgoing mail) {
    try {
      MimeMessage message = composer.compose(session, mail);
      connect();
      transport.sendMessage(message, message.getAllRecipients());
      return SendOutcome.taken();
    } catch (AddressException e) {
      return new SendOutcome.AddressRefused("not-an-address");
    } catch (MessagingException e) {
      close();
      return SmtpAnswers.of(e);
    }
  }

  /** Closes it; the next mail opens it again. */
  @Override
  public void close() {
    Transport open = transport;
    transport = null;
    if (open != null) {
      try {
        open.close();
      } catch (MessagingException e) {
        // It is gone either way: what matters was answered before.
      }
    }
  }

  private void connect() throws MessagingException {
    if (transport != null && transport.isConnected()) {
      return;
    }
    close();
    transport = open();
    transport.connect(
        settings.host(),
        settings.port(),
        settings.username().orElse(null),
        settings.password().orElse(null));
  }

  private Transport open() {
    try {
      return session.getTransport(
          settings.security() == MailSettings.Security.TLS ? "smtps" : "smtp");
    } catch (NoSuchProviderException e) {
      throw new IllegalStateException("The mail library brings SMTP", e);
    }
  }

  private static Properties properties(MailSettings settings) {
    String millis = Long.toString(settings.timeout().toMillis());
    boolean startTls = settings.security() == MailSettings.Security.STARTTLS;
    Properties all = new Properties();
    for (String protocol : new String[] {"mail.smtp", "mail.smtps"}) {
      all.setProperty(protocol + ".connectiontimeout", millis);
      all.setProperty(protocol + ".timeout", millis);
      all.setProperty(protocol + ".writetimeout", millis);
      all.setProperty(protocol + ".auth", Boolean.toString(settings.username().isPresent()));
      all.setProperty(protocol + ".starttls.enable", Boolean.toString(startTls));
      all.setProperty(protocol + ".starttls.required", Boolean.toString(startTls));
      all.setProperty(protocol + ".ssl.checkserveridentity", "true");
      all.setProperty(protocol + ".localhost", settings.domain());
      all.setProperty(protocol + ".quitwait", "false");
    }
    return all;
  }
}
