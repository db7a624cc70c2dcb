package org.tapeline.journal.token;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * The links by which a guardian chooses another slot: notify makes them, fitting opens them. Both
 * have the same key and no other word between them while they work, so the token says all that
 * fitting has to know.
 */
public final class SlotLinks {
  private static final int LANGUAGE = 2;
  private static final int LENGTH = 2 * 16 + LANGUAGE;

  private final TimedTokens tokens;

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link SignedTokens#LEAST_BYTES}
   */
  public SlotLinks(byte[] key) {
    this.tokens = new TimedTokens(key, "tapeline choose slot");
  }

  /**
   * What a link is for.
   *
   * @param refitCase the case whose slot may be chosen, and no other's
   * @param notice on whose page the link stood
   * @param language of the reader: two letters (ISO 639-1)
   */
  public record Slot(UUID refitCase, UUID notice, String language) {
    public Slot {
      if (!language.matches("[a-z]{2}")) {
        throw new IllegalArgumentException("A language has two letters, not " + language);
      }
    }
  }

  /**
   * @param until the link opens nothing from then on; whole seconds
   */
  public String seal(Slot slot, Instant until) {
    return tokens.seal(
        ByteBuffer.allocate(LENGTH)
            .putLong(slot.refitCase().getMostSignificantBits())
            .putLong(slot.refitCase().getLeastSignificantBits())
            .putLong(slot.notice().getMostSignificantBits())
            .putLong(slot.notice().getLeastSignificantBits())
            .put(slot.language().getBytes(StandardCharsets.US_ASCII))
            .array(),
        until);
  }

  /** Empty for a wrong token and for one that has ended. */
  public Optional<Slot> open(String token, Instant now) {
    return tokens
        .open(token, now)
        .filter(content -> content.length == LENGTH)
        .map(ByteBuffer::wrap)
        .map(
            read ->
                new Slot(
                    new UUID(read.getLong(), read.getLong()),
                    new UUID(read.getLong(), read.getLong()),
                    StandardCharsets.US_ASCII.decode(read).toString()));
  }
}
