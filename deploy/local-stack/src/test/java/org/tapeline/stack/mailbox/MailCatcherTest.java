package org.tapeline.stack.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.Message;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MailCatcherTest {
  @TempDir Path directory;
  private Mailbox mailbox;
  private MailCatcher catcher;

  @BeforeEach
  void start() throws Exception {
    mailbox = new Mailbox(directory);
    catcher = MailCatcher.start("127.0.0.1", 0, mailbox);
  }

  @AfterEach
  void stop() {
    catcher.close();
  }

  @Test
  @DisplayName("A mail is stored once its sender was told that it was taken, with all its parts")
  void storesBeforeItAnswers() throws Exception {
    send("Re-fit on Tuesday · año", "Come at 17:30.", "<p>Come at 17:30.</p>");
    StoredMail mail = mailbox.all().getFirst();
    assertThat(mail.to()).isEqualTo("carmen@example.org");
    assertThat(mail.subject()).isEqualTo("Re-fit on Tuesday · año");
    assertThat(mail.text()).contains("Come at 17:30.");
    assertThat(mail.html()).contains("<p>Come at 17:30.</p>");
    assertThat(mail.attachments()).extracting(StoredMail.Attachment::name).containsExactly("a.ics");
  }

  @Test
  @DisplayName("The newest mail stands first, also after a restart")
  void keepsTheOrderOverARestart() throws Exception {
    send("First", "1", "1");
    mailbox = new Mailbox(directory);
    catcher.close();
    catcher = MailCatcher.start("127.0.0.1", 0, mailbox);
    send("Second", "2", "2");
    assertThat(mailbox.all()).extracting(StoredMail::subject).containsExactly("Second", "First");
  }

  @Test
  @DisplayName("A mail that nobody can read does not hide the others")
  void showsTheOthersBesideABrokenOne() throws Exception {
    raw("From: <<<>>\r\nTo: ,,@\r\nContent-Type: multipart/mixed\r\n\r\nno parts");
    send("Readable", "1", "1");
    assertThat(mailbox.all())
        .hasSize(2)
        .first()
        .extracting(StoredMail::subject)
        .isEqualTo("Readable");
  }

  private void send(String subject, String text, String html) throws Exception {
    Properties settings = new Properties();
    settings.setProperty("mail.smtp.host", "127.0.0.1");
    settings.setProperty("mail.smtp.port", Integer.toString(catcher.port()));
    MimeMessage message = new MimeMessage(Session.getInstance(settings));
    message.setFrom(new InternetAddress("tapeline@example.org"));
    message.setRecipient(Message.RecipientType.TO, new InternetAddress("carmen@example.org"));
    message.setSubject(subject, "UTF-8");
    MimeMultipart parts = new MimeMultipart();
    for (String part : new String[] {"plain", "html", "calendar"}) {
      MimeBodyPart body = new MimeBodyPart();
      body.setText(part.equals("html") ? html : text, "UTF-8", part);
      if (part.equals("calendar")) {
        body.setFileName("a.ics");
      }
      parts.addBodyPart(body);
    }
    message.setContent(parts);
    Transport.send(message);
  }

  private void raw(String message) throws Exception {
    try (Socket socket = new Socket("127.0.0.1", catcher.port());
        BufferedReader in =
            new BufferedReader(
                new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII));
        OutputStream out = socket.getOutputStream()) {
      in.readLine();
      for (String line :
          new String[] {
            "HELO here", "MAIL FROM:<a@example.org>", "RCPT TO:<b@example.org>", "DATA"
          }) {
        out.write((line + "\r\n").getBytes(StandardCharsets.US_ASCII));
        in.readLine();
      }
      out.write((message + "\r\n.\r\n").getBytes(StandardCharsets.US_ASCII));
      assertThat(in.readLine()).startsWith("250");
    }
  }
}
