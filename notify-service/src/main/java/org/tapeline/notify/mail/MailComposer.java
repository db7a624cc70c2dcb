package org.tapeline.notify.mail;

import jakarta.activation.DataHandler;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.mail.Message.RecipientType;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Date;
import java.util.UUID;
import org.tapeline.notify.channel.Outgoing;

/**
 * Puts a notice into MIME: plain text and HTML as alternatives, the calendar file attached. The
 * Message-ID follows from the notice, so that a mail that had to be sent again can be recognised as
 * the same one.
 */
@ApplicationScoped
class MailComposer {
  private static final String UTF_8 = StandardCharsets.UTF_8.name();

  private final MailSettings settings;
  private final InternetAddress from;
  private final Clock clock;

  MailComposer(MailSettings settings, Clock clock) {
    this.settings = settings;
    this.clock = clock;
    try {
      this.from = new InternetAddress(settings.from(), true);
    } catch (AddressException e) {
      throw new IllegalArgumentException("tapeline.mail.from is not an address", e);
    }
  }

  /**
   * @throws AddressException when the recipient's address is none
   */
  MimeMessage compose(Session session, Outgoing mail) throws MessagingException {
    IdentifiedMessage message = new IdentifiedMessage(session, messageId(mail.notice()));
    message.setFrom(from);
    message.setRecipient(RecipientType.TO, new InternetAddress(mail.to(), true));
    message.setSubject(onOneLine(mail.subject()), UTF_8);
    message.setSentDate(Date.from(clock.instant()));
    message.setContentLanguage(new String[] {mail.letter().language()});
    // No out-of-office answers (RFC 3834).
    message.setHeader("Auto-Submitted", "auto-generated");
    if (mail.refitCase().isPresent()) {
      message.setHeader("References", "<refit." + mail.refitCase().get() + "@" + domain() + ">");
    }
    if (mail.turnOff().isPresent()) {
      // One click in the mail program, without a log-in (RFC 2369, RFC 8058). Whoever signs
      // outgoing
      // mail with DKIM has to cover both headers.
      message.setHeader("List-Unsubscribe", "<" + mail.turnOff().get() + ">");
      message.setHeader("List-Unsubscribe-Post", "List-Unsubscribe=One-Click");
    }
    MimeMultipart words = words(mail);
    if (mail.calendar().isEmpty()) {
      message.setContent(words);
    } else {
      MimeBodyPart body = new MimeBodyPart();
      body.setContent(words);
      message.setContent(new MimeMultipart("mixed", body, calendar(mail.calendar().get())));
    }
    message.saveChanges();
    return message;
  }

  String messageId(UUID notice) {
    return "<notice." + notice + "@" + domain() + ">";
  }

  private static MimeMultipart words(Outgoing mail) throws MessagingException {
    MimeBodyPart plain = new MimeBodyPart();
    plain.setText(mail.plain(), UTF_8, "plain");
    MimeBodyPart html = new MimeBodyPart();
    html.setText(mail.html(), UTF_8, "html");
    return new MimeMultipart("alternative", plain, html);
  }

  /** RFC 6047, section 2.4: the part says the method that stands in the file. */
  private static MimeBodyPart calendar(String file) throws MessagingException {
    String method = file.contains("\r\nMETHOD:CANCEL\r\n") ? "CANCEL" : "PUBLISH";
    MimeBodyPart part = new MimeBodyPart();
    part.setDataHandler(
        new DataHandler(
            new ByteArrayDataSource(
                file.getBytes(StandardCharsets.UTF_8),
                "text/calendar; charset=UTF-8; method=" + method)));
    part.setFileName("refit.ics");
    part.setDisposition(MimeBodyPart.ATTACHMENT);
    return part;
  }

  private String domain() {
    return settings.domain();
  }

  /** The library makes up a Message-ID of its own unless told otherwise here. */
  private static final class IdentifiedMessage extends MimeMessage {
    private final String id;

    IdentifiedMessage(Session session, String id) {
      super(session);
      this.id = id;
    }

    @Override
    protected void updateMessageID() throws MessagingException {
      setHeader("Message-ID", id);
    }
  }

  /** A line break in a subject would begin a header of somebody else's choice. */
  private static String onOneLine(String subject) {
    return subject.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029]+", " ");
  }
}
