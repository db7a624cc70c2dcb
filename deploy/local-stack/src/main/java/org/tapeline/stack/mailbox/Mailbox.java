package org.tapeline.stack.mailbox;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/** Caught messages as files, newest first. A message is on the disk before it is accepted. */
public final class Mailbox {
  private static final String SUFFIX = ".eml";
  private static final int MOST_SHOWN = 300;

  private final Path directory;
  private final AtomicLong last;
  private final TextBox texts;

  public Mailbox(Path directory) throws IOException {
    this.directory = Files.createDirectories(directory);
    this.last = new AtomicLong(newest());
    this.texts = new TextBox(directory.resolve("texts"));
  }

  /** The text messages, in a folder beside the mails. */
  public TextBox texts() {
    return texts;
  }

  private long newest() throws IOException {
    try (var files = Files.list(directory)) {
      return files
          .filter(file -> file.toString().endsWith(SUFFIX))
          .mapToLong(Mailbox::number)
          .max()
          .orElse(0);
    }
  }

  static long number(Path file) {
    String name = file.getFileName().toString();
    return Long.parseLong(name.substring(0, name.length() - SUFFIX.length()));
  }

  void store(InputStream message) throws IOException {
    long number = last.incrementAndGet();
    Path part = directory.resolve(number + ".part");
    Files.copy(message, part, StandardCopyOption.REPLACE_EXISTING);
    try (FileChannel file = FileChannel.open(part, StandardOpenOption.WRITE)) {
      file.force(true);
    }
    Files.move(part, directory.resolve(number + SUFFIX), StandardCopyOption.ATOMIC_MOVE);
  }

  /** The newest of them. */
  public List<StoredMail> all() throws IOException {
    try (var files = Files.list(directory)) {
      return files
          .filter(file -> file.toString().endsWith(SUFFIX))
          .sorted(Comparator.comparingLong(Mailbox::number).reversed())
          .limit(MOST_SHOWN)
          .map(StoredMail::read)
          .toList();
    }
  }

  public Optional<StoredMail> one(long number) {
    Path file = directory.resolve(number + SUFFIX);
    return Files.exists(file) ? Optional.of(StoredMail.read(file)) : Optional.empty();
  }
}
