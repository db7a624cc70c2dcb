package org.tapeline.notify.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.ContentType;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.channel.Outgoing;
import org.tapeline.notify.words.Letter;

@DisplayName("A mail")
class MailComposerTest {
  private static final Session SESSION = Session.getInstance(new Properties());
  private static final UUID NOTICE = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d21");
  private static final UUID CASE = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d22");

  private static MailComposer at(String time) {
    return new MailComposer(new Settings(), Clock.fixed(Instant.parse(time), ZoneOffset.UTC));
  }

  private static Outgoing mail(String to, String subject) {
    return mail(to, subject, Optional.empty());
  }

  private static Outgoing mail(String to, String subject, Optional<String> turnOff) {
    Letter.Link link = new Letter.Link("Leer", "https://example.org", true);
    return new Outgoing(
        NOTICE,
        "key",
        to,
        new Letter("es", subject, "h", "h", "n", "w", "a", link, "t"),
        subject,
        "Qué pasó",
        "<p>Qué pasó</p>",
        Optional.of("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n"),
        Optional.of(CASE),
        turnOff);
  }

  @Test
  @DisplayName("that has to be sent again is recognised as the same one")
  void sameAgain() throws MessagingException {
    Outgoing mail = mail("rosa@families.example.org", "No usar");
    MimeMessage first = at("2025-09-12T17:00:00Z").compose(SESSION, mail);
    MimeMessage again = at("2025-09-12T18:00:00Z").compose(SESSION, mail);
    assertThat(first.getMessageID())
        .isEqualTo("<notice." + NOTICE + "@larkfield.example.org>")
        .isEqualTo(again.getMessageID());
  }

  @Test
  @DisplayName("has text, HTML and calendar, its language, and asks for no automatic answer")
  void form() throws MessagingException, IOException {
    MimeMessage message =
        at("2025-09-12T17:00:00Z").compose(SESSION, mail("rosa@families.example.org", "No usar"));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    message.writeTo(out);
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains(
            "multipart/mixed",
            "multipart/alternative",
            "text/plain; charset=UTF-8",
            "text/html; charset=UTF-8",
            "method=PUBLISH",
            "filename=refit.ics",
            "Content-Language: es",
            "Auto-Submitted: auto-generated",
            "References: <refit." + CASE + "@larkfield.example.org>");
  }

  @Test
  @DisplayName("to what is no address, or to more than one, is refused")
  void noAddress() {
    MailComposer composer = at("2025-09-12T17:00:00Z");
    for (String to :
        new String[] {"rosa", "a@example.org, b@example.org", "a@example.org\r\nBcc: b"}) {
      Outgoing mail = mail(to, "No usar");
      assertThatThrownBy(() -> composer.compose(SESSION, mail))
          .as(to)
          .isInstanceOf(AddressException.class);
    }
  }

  @Test
  @DisplayName("has its subject on one line, whatever name stands in it")
  void noHeaderFromASubject() throws MessagingException, IOException {
    for (String end : List.of("\r\n", "\n", "\r", "\u0085", "\u2028")) {
      MimeMessage message =
          at("2025-09-12T17:00:00Z")
              .compose(SESSION, mail("rosa@example.org", "Ada" + end + "Bcc: all@example.org"));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      message.writeTo(out);
      MimeMessage read = new MimeMessage(SESSION, new ByteArrayInputStream(out.toByteArray()));
      assertThat(read.getHeader("Bcc")).isNull();
      assertThat(read.getSubject()).isEqualTo("Ada Bcc: all@example.org");
    }
  }

  @Test
  @DisplayName("of news can be turned off with one click (RFC 8058), one about safety cannot")
  void oneClick() throws MessagingException {
    MailComposer composer = at("2025-09-12T17:00:00Z");
    String address = "https://helmets.example.org/notify/unsubscribe/token";
    MimeMessage news =
        composer.compose(SESSION, mail("rosa@example.org", "Ajustado", Optional.of(address)));
    assertThat(news.getHeader("List-Unsubscribe")).containsExactly("<" + address + ">");
    assertThat(news.getHeader("List-Unsubscribe-Post"))
        .containsExactly("List-Unsubscribe=One-Click");
    MimeMessage safety = composer.compose(SESSION, mail("rosa@example.org", "No usar"));
    assertThat(safety.getHeader("List-Unsubscribe")).isNull();
    assertThat(safety.getHeader("List-Unsubscribe-Post")).isNull();
  }

  @Test
  @DisplayName("is read by a mail program as it was written (RFC 5322, RFC 2045, RFC 6047)")
  void readBack() throws MessagingException, IOException {
    MimeMessage message =
        at("2025-09-12T17:00:00Z")
            .compose(SESSION, mail("rosa@families.example.org", "No usar: el casco de José"));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    message.writeTo(out);
    String wire = out.toString(StandardCharsets.US_ASCII);
    assertThat(wire.replace("\r\n", "")).doesNotContain("\n", "\r");
    // RFC 5322, section 2.1.1: 998 characters at most, 78 wanted; RFC 2047: 76 in an encoded word.
    assertThat(wire.split("\r\n")).allSatisfy(line -> assertThat(line.length()).isLessThan(999));
    MimeMessage read = new MimeMessage(SESSION, new ByteArrayInputStream(out.toByteArray()));
    for (String once : List.of("Date", "From", "To", "Message-ID", "Subject", "MIME-Version")) {
      assertThat(read.getHeader(once)).as(once).hasSize(1);
    }
    assertThat(read.getSubject()).isEqualTo("No usar: el casco de José");
    assertThat(read.getSentDate()).isEqualTo(Instant.parse("2025-09-12T17:00:00Z"));
    assertThat(InternetAddress.parseHeader(read.getHeader("From", ","), true)).hasSize(1);
    MimeMultipart mixed = (MimeMultipart) read.getContent();
    MimeMultipart words = (MimeMultipart) mixed.getBodyPart(0).getContent();
    assertThat(words.getBodyPart(0).getContent()).isEqualTo("Qué pasó");
    assertThat(words.getBodyPart(1).getContent()).isEqualTo("<p>Qué pasó</p>");
    assertThat(new ContentType(mixed.getBodyPart(1).getContentType()).getParameter("method"))
        .isEqualTo("PUBLISH");
  }

  @Test
  @DisplayName("says in its calendar part that the file calls a date off")
  void cancelled() throws MessagingException, IOException {
    Outgoing news = mail("rosa@example.org", "Cancelado");
    Outgoing off =
        new Outgoing(
            news.notice(),
            news.key(),
            news.to(),
            news.letter(),
            news.subject(),
            news.plain(),
            news.html(),
            Optional.of("BEGIN:VCALENDAR\r\nMETHOD:CANCEL\r\nEND:VCALENDAR\r\n"),
            news.refitCase(),
            news.turnOff());
    MimeMessage message = at("2025-09-12T17:00:00Z").compose(SESSION, off);
    MimeMultipart mixed = (MimeMultipart) message.getContent();
    assertThat(new ContentType(mixed.getBodyPart(1).getContentType()).getParameter("method"))
        .isEqualTo("CANCEL");
  }
}
