package org.tapeline.fitting.evidence;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.token.SignedTokens;

/**
 * Makes and reads the tokens by which a printed sheet is checked against the record: session id,
 * fingerprint of the facts, moment of printing in epoch seconds, signed. A token names nobody and
 * does not end: paper is kept for years.
 */
public final class SheetKey {
  private static final int LENGTH = 16 + Fingerprint.BYTES + 8;

  private final SignedTokens tokens;

  /** What a sheet says of itself. */
  public record Reference(UUID session, Fingerprint fingerprint, Instant printedAt) {}

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link SignedTokens#LEAST_BYTES}
   */
  public SheetKey(byte[] key) {
    this.tokens = new SignedTokens(key, "tapeline sign-off sheet");
  }

  public String token(Reference sheet) {
    return tokens.seal(
        ByteBuffer.allocate(LENGTH)
            .putLong(sheet.session().getMostSignificantBits())
            .putLong(sheet.session().getLeastSignificantBits())
            .put(sheet.fingerprint().bytes())
            .putLong(sheet.printedAt().getEpochSecond())
            .array());
  }

  /** Empty for a token that was not made with this key or was changed; why is not said. */
  public Optional<Reference> open(String token) {
    return tokens.open(token).filter(content -> content.length == LENGTH).map(SheetKey::read);
  }

  private static Reference read(byte[] content) {
    ByteBuffer read = ByteBuffer.wrap(content);
    UUID session = new UUID(read.getLong(), read.getLong());
    byte[] fingerprint = new byte[Fingerprint.BYTES];
    read.get(fingerprint);
    return new Reference(
        session, Fingerprint.of(fingerprint), Instant.ofEpochSecond(read.getLong()));
  }
}
