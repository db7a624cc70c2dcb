package org.tapeline.journal.token;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;

/** Signed tokens with an end: one purpose, one content, until a moment that is signed with them. */
public final class TimedTokens {
  private final SignedTokens tokens;

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link SignedTokens#LEAST_BYTES}
   */
  public TimedTokens(byte[] key, String purpose) {
    this.tokens = new SignedTokens(key, purpose);
  }

  /**
   * @param until the token opens nothing from then on; whole seconds
   */
  public String seal(byte[] content, Instant until) {
    return tokens.seal(
        ByteBuffer.allocate(content.length + Long.BYTES)
            .put(content)
            .putLong(until.getEpochSecond())
            .array());
  }

  /** The content; empty for a wrong token and for one that has ended, and nobody learns which. */
  public Optional<byte[]> open(String token, Instant now) {
    return tokens
        .open(token)
        .filter(signed -> signed.length >= Long.BYTES)
        .filter(signed -> now.getEpochSecond() < end(signed))
        .map(signed -> Arrays.copyOf(signed, signed.length - Long.BYTES));
  }

  private static long end(byte[] signed) {
    return ByteBuffer.wrap(signed).getLong(signed.length - Long.BYTES);
  }
}
