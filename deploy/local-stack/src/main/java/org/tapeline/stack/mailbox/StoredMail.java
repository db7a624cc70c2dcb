package org.tapeline.stack.mailbox;

import jakarta.mail.Address;
import jakarta.mail.BodyPart;
import jakarta.mail.MessagingException;
import jakarta.mail.Multipart;
import jakarta.mail.Part;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A caught message, taken apart for reading.
 *
 * @param text the plain text part, empty where there is none
 * @param html the HTML part, empty where there is none
 */
public record StoredMail(
    long number,
    String from,
    String to,
    String subject,
    Instant at,
    String text,
    String html,
    List<Attachment> attachments) {

  /** A part that is not the message itself. */
  public record Attachment(String name, String type, byte[] content) {}

  static StoredMail read(Path file) {
    long number = Mailbox.number(file);
    try (InputStream in = Files.newInputStream(file)) {
      MimeMessage message = new MimeMessage(null, in);
      Reader reader = new Reader();
      reader.take(message);
      return new StoredMail(
          number,
          addresses(message.getFrom()),
          addresses(message.getRecipients(MimeMessage.RecipientType.TO)),
          message.getSubject() == null ? "" : message.getSubject(),
          Files.getLastModifiedTime(file).toInstant(),
          reader.text,
          reader.html,
          reader.attachments);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (MessagingException e) {
      // Anything may be sent to a mail server; it must not hide the mails that can be read.
      return unreadable(number, e.getMessage());
    }
  }

  private static StoredMail unreadable(long number, String why) {
    String subject = "(A message that cannot be read)";
    return new StoredMail(number, "", "", subject, Instant.EPOCH, "" + why, "", List.of());
  }

  private static String addresses(Address[] addresses) {
    return addresses == null ? "" : InternetAddress.toUnicodeString(addresses);
  }

  private static final class Reader {
    private final List<Attachment> attachments = new ArrayList<>();
    private String text = "";
    private String html = "";

    void take(Part part) throws MessagingException, IOException {
      if (part.isMimeType("multipart/*")) {
        Multipart parts = (Multipart) part.getContent();
        for (int i = 0; i < parts.getCount(); i++) {
          BodyPart inner = parts.getBodyPart(i);
          take(inner);
        }
      } else if (part.getFileName() != null) {
        attach(part, part.getFileName());
      } else if (part.isMimeType("text/html")) {
        html = content(part);
      } else if (part.isMimeType("text/plain")) {
        text = content(part);
      } else {
        attach(part, "part-" + (attachments.size() + 1));
      }
    }

    private void attach(Part part, String name) throws MessagingException, IOException {
      String type = part.getContentType().split(";")[0].strip();
      attachments.add(new Attachment(name, type, part.getInputStream().readAllBytes()));
    }

    private static String content(Part part) throws MessagingException, IOException {
      Object content = part.getContent();
      return content instanceof String text
          ? text
          : new String(part.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
