package org.tapeline.proof.faults.compare;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the mail catcher took, by the notice that each mail's Message-ID names. */
record Mails(Map<String, Integer> byNotice, long others) {
  private static final Pattern ID = Pattern.compile("<notice\\.([0-9a-f-]{36})@[^>]+>");

  /**
   * @param folder of the mail catcher
   */
  static Mails in(Path folder) {
    Map<String, Integer> byNotice = new TreeMap<>();
    long others = 0;
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".eml")).toList()) {
        Matcher id = ID.matcher(messageId(file));
        if (id.matches()) {
          byNotice.merge(id.group(1), 1, Integer::sum);
        } else {
          others++;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Mails(byNotice, others);
  }

  private static String messageId(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      String id = new MimeMessage((Session) null, in).getMessageID();
      return id == null ? "" : id;
    } catch (MessagingException e) {
      throw new IOException(file + " is no mail", e);
    }
  }
}
