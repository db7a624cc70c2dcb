package org.tapeline.acceptance;

import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The files of a stack's mail catcher. A mail that came twice with one Message-ID counts once: a
 * try that was cut off after the server took it is made again, and mail programs show it once.
 */
final class CaughtMails {
  private final Path folder;
  private final Map<Path, Mail> read = new TreeMap<>();

  CaughtMails(Path folder) {
    this.folder = folder;
  }

  private record Mail(String id, String to, String subject, String text) {}

  /** Message-IDs of the mails to an address that hold these words in subject or text. */
  List<String> of(String address, String words) {
    readNew();
    return read.values().stream()
        .filter(mail -> mail.to().contains(address))
        .filter(mail -> mail.subject().contains(words) || mail.text().contains(words))
        .map(Mail::id)
        .distinct()
        .toList();
  }

  private void readNew() {
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(file -> file.toString().endsWith(".eml"))
          .filter(file -> !read.containsKey(file))
          .forEach(file -> read.put(file, mail(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Mail mail(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      MimeMessage message = new MimeMessage((Session) null, in);
      List<String> texts = new ArrayList<>();
      collect(message, texts);
      return new Mail(
          message.getMessageID(),
          message.getHeader("To", ","),
          message.getSubject(),
          String.join("\n", texts));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (MessagingException e) {
      throw new IllegalStateException(file + " is no mail", e);
    }
  }

  private static void collect(Part part, List<String> texts)
      throws MessagingException, IOException {
    if (part.getContent() instanceof MimeMultipart parts) {
      for (int i = 0; i < parts.getCount(); i++) {
        collect(parts.getBodyPart(i), texts);
      }
    } else if (part.isMimeType("text/plain")) {
      texts.add(part.getContent().toString());
    }
  }
}
