package org.tapeline.fitting.evidence;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Makes and reads the tokens by which a printed sheet is checked against the record. A token is
 * base64url (RFC 4648, no padding) of format byte, session id, fingerprint of the facts, moment of
 * printing in epoch seconds, and the HMAC-SHA-256 (RFC 2104) of these. It names nobody and does not
 * end: paper is kept for years.
 */
public final class SheetKey {
  /** A key shorter than the hash weakens it (RFC 2104, section 3). */
  public static final int LEAST_BYTES = 32;

  private static final byte FORMAT = 1;
  private static final int HEAD = 1 + 16 + Fingerprint.BYTES + 8;
  private static final int MAC = 32;
  private static final byte[] PURPOSE =
      "tapeline sign-off sheet".getBytes(StandardCharsets.US_ASCII);

  private final SecretKeySpec key;

  /** What a sheet says of itself. */
  public record Reference(UUID session, Fingerprint fingerprint, Instant printedAt) {}

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link #LEAST_BYTES}
   */
  public SheetKey(byte[] key) {
    if (key.length < LEAST_BYTES) {
      throw new IllegalArgumentException(
          "A sheet key has at least " + LEAST_BYTES + " bytes, not " + key.length);
    }
    this.key = new SecretKeySpec(key, "HmacSHA256");
  }

  public String token(Reference sheet) {
    ByteBuffer token = ByteBuffer.allocate(HEAD + MAC);
    token
        .put(FORMAT)
        .putLong(sheet.session().getMostSignificantBits())
        .putLong(sheet.session().getLeastSignificantBits())
        .put(sheet.fingerprint().bytes())
        .putLong(sheet.printedAt().getEpochSecond());
    token.put(mac(token.array()));
    return Base64.getUrlEncoder().withoutPadding().encodeToString(token.array());
  }

  /** Empty for a token that was not made with this key or was changed; why is not said. */
  public Optional<Reference> open(String token) {
    byte[] bytes;
    try {
      bytes = Base64.getUrlDecoder().decode(token);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    if (bytes.length != HEAD + MAC || bytes[0] != FORMAT) {
      return Optional.empty();
    }
    ByteBuffer read = ByteBuffer.wrap(bytes);
    read.get();
    UUID session = new UUID(read.getLong(), read.getLong());
    byte[] fingerprint = new byte[Fingerprint.BYTES];
    read.get(fingerprint);
    long printedAt = read.getLong();
    byte[] given = new byte[MAC];
    read.get(given);
    return MessageDigest.isEqual(given, mac(bytes))
        ? Optional.of(
            new Reference(session, Fingerprint.of(fingerprint), Instant.ofEpochSecond(printedAt)))
        : Optional.empty();
  }

  private byte[] mac(byte[] token) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(key);
      mac.update(PURPOSE);
      mac.update(token, 0, HEAD);
      return mac.doFinal();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every JDK has HMAC-SHA-256", e);
    }
  }
}
