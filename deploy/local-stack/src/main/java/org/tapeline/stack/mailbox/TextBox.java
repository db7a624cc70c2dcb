package org.tapeline.stack.mailbox;

import io.vertx.core.json.JsonObject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Caught text messages as files, newest first; one for each idempotency key. */
public final class TextBox {
  private static final String SUFFIX = ".json";
  private static final int MOST_SHOWN = 300;

  private final Path directory;

  TextBox(Path directory) throws IOException {
    this.directory = Files.createDirectories(directory);
  }

  /** A caught text message. */
  public record StoredText(String to, String body, Instant at) {

    static StoredText read(Path file) {
      try {
        JsonObject json = new JsonObject(Files.readString(file));
        return new StoredText(
            json.getString("to"), json.getString("body"), Instant.parse(json.getString("at")));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Stores a message, unless one with the same key is there.
   *
   * @param key letters, digits, full stops and hyphens, 100 at most
   * @return false for a key that is none
   */
  public synchronized boolean store(String key, String to, String body) throws IOException {
    if (!key.matches("[A-Za-z0-9][A-Za-z0-9.-]{0,99}")) {
      return false;
    }
    Path file = directory.resolve(key + SUFFIX);
    if (Files.notExists(file)) {
      JsonObject json =
          new JsonObject().put("to", to).put("body", body).put("at", Instant.now().toString());
      Files.writeString(file, json.encode());
    }
    return true;
  }

  /** The newest of them. */
  public List<StoredText> all() throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files
          .filter(file -> file.toString().endsWith(SUFFIX))
          .map(StoredText::read)
          .sorted(Comparator.comparing(StoredText::at).reversed())
          .limit(MOST_SHOWN)
          .toList();
    }
  }
}
