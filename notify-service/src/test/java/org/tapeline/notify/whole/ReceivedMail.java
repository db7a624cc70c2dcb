package org.tapeline.notify.whole;

import jakarta.mail.MessagingException;
import jakarta.mail.Multipart;
import jakarta.mail.Part;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;

/** A mail as a mail program reads it. */
record ReceivedMail(String subject, String messageId, String language, List<Piece> pieces) {

  record Piece(String type, String text) {}

  static ReceivedMail of(MimeMessage message) {
    try {
      List<Piece> pieces = new ArrayList<>();
      collect(message, pieces);
      return new ReceivedMail(
          message.getSubject(),
          message.getMessageID(),
          message.getHeader("Content-Language", ","),
          pieces);
    } catch (MessagingException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  String plain() {
    return piece("text/plain");
  }

  String html() {
    return piece("text/html");
  }

  boolean hasCalendar() {
    return pieces.stream().anyMatch(p -> p.type().startsWith("text/calendar"));
  }

  Calendar calendar() {
    try {
      return new CalendarBuilder().build(new StringReader(piece("text/calendar")));
    } catch (IOException | ParserException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The address of the parent's page in the plain text. */
  String link() {
    return plain()
        .lines()
        .filter(line -> line.contains("/notify/n/"))
        .findFirst()
        .orElseThrow()
        .strip();
  }

  private String piece(String type) {
    return pieces.stream()
        .filter(p -> p.type().startsWith(type))
        .map(Piece::text)
        .findFirst()
        .orElseThrow();
  }

  private static void collect(Part part, List<Piece> pieces)
      throws MessagingException, IOException {
    if (part.isMimeType("multipart/*") && part.getContent() instanceof Multipart parts) {
      for (int i = 0; i < parts.getCount(); i++) {
        collect(parts.getBodyPart(i), pieces);
      }
      return;
    }
    try (InputStream in = part.getInputStream()) {
      pieces.add(
          new Piece(
              part.getContentType().toLowerCase(Locale.ROOT),
              new String(in.readAllBytes(), StandardCharsets.UTF_8)));
    }
  }
}
