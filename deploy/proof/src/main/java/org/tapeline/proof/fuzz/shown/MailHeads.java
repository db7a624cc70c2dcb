package org.tapeline.proof.fuzz.shown;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Looks in the mails that were caught for a header that came from data. */
public final class MailHeads {
  private static final Pattern FORGED = Pattern.compile("(?im)^(x-marked|bcc):");

  private MailHeads() {}

  /**
   * @param folder of the mail catcher
   * @return the mails' files that have one
   */
  public static List<Path> forged(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).filter(MailHeads::isForged).toList();
    }
  }

  private static boolean isForged(Path mail) {
    try {
      String text = Files.readString(mail, StandardCharsets.ISO_8859_1);
      String head = text.split("\r?\n\r?\n", 2)[0];
      return FORGED.matcher(head).find();
    } catch (IOException e) {
      return false;
    }
  }
}
