package org.tapeline.stack.mailbox;

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
    long number = Long.parseLong(file.getFileName().toString().replace(".eml", ""));
    try (InputStream in = Files.newInputStream(file)) {
      MimeMessage message = new MimeMessage(null, in);
      Reader reader = new Reader();
      reader.take(message);
      return new StoredMail(
          number,
          InternetAddress.toUnicodeString(message.getFrom()),
          InternetAddress.toUnicodeString(message.getRecipients(MimeMessage.RecipientType.TO)),
          message.getSubject() == null ? "" : message.getSubject(),
          Files.getLastModifiedTime(file).toInstant(),
          reader.text,
          reader.html,
          reader.attachments);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (MessagingException e) {
      throw new IllegalStateException("Message " + number + " cannot be read", e);
    }
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
        attachments.add(
            new Attachment(
                part.getFileName(),
                part.getContentType().split(";")[0],
                part.getInputStream().readAllBytes()));
      } else if (part.isMimeType("text/html")) {
        html = content(part);
      } else if (part.isMimeType("text/plain")) {
        text = content(part);
      }
    }

    private static String content(Part part) throws MessagingException, IOException {
      Object content = part.getContent();
      return content instanceof String text
          ? text
          : new String(part.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
