package org.tapeline.journal.store;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/**
 * Chains the events of a stream: each row's hash covers the row and the hash before it, so that a
 * row that is altered, removed or put in between breaks every hash after it.
 */
public final class HashChain {
  /** What stands before the first event of a stream: 32 zero bytes. */
  public static final byte[] START = new byte[32];

  private HashChain() {}

  public static byte[] next(
      byte[] previous,
      UUID eventId,
      String stream,
      long version,
      String type,
      String key,
      Instant time,
      UUID correlationId,
      UUID causationId,
      String data) {
    return new Sha256()
        .add(previous)
        .add(eventId)
        .add(utf8(stream))
        .add(version)
        .add(utf8(type))
        .add(utf8(key))
        .add(ChronoUnit.MICROS.between(Instant.EPOCH, time))
        .add(correlationId)
        .add(causationId)
        .add(utf8(data))
        .digest();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
