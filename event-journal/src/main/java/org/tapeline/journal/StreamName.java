package org.tapeline.journal;

import java.util.Objects;

/**
 * Names one stream of events: one fit session, one helmet, one player's sign-off.
 *
 * @param kind what the stream is about, lower-case letters only, such as {@code session}
 * @param id which one, such as a UUID or an asset tag; not blank
 * @param key the Kafka key of all its events; all streams that must keep their order among each
 *     other share a key (all of one player)
 */
public record StreamName(String kind, String id, String key) {

  public StreamName {
    if (!kind.matches("[a-z]+")) {
      throw new IllegalArgumentException("A stream's kind is lower-case letters, not: " + kind);
    }
    if (id.isBlank() || key.isBlank()) {
      throw new IllegalArgumentException("A stream needs an id and a key");
    }
  }

  public static StreamName of(String kind, Object id, Object key) {
    return new StreamName(
        kind, Objects.requireNonNull(id).toString(), Objects.requireNonNull(key).toString());
  }

  /** The name as it is stored and sent: {@code session-0198...}. */
  public String text() {
    return kind + "-" + id;
  }

  @Override
  public String toString() {
    return text();
  }
}
