package org.tapeline.notify.link;

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
 * Makes and reads the tokens of parents' links: one notice, one purpose, one end. A token is
 * base64url (RFC 4648, no padding) of format byte, notice id, end in epoch seconds, and the
 * HMAC-SHA-256 (RFC 2104) of these. Who has a token learns nothing from it about any other.
 */
public final class LinkKey {
  /** A key shorter than the hash weakens it (RFC 2104, section 3). */
  public static final int LEAST_BYTES = 32;

  private static final byte FORMAT = 1;
  private static final int HEAD = 1 + 16 + 8;
  private static final int MAC = 32;
  private static final byte[] PURPOSE = "tapeline notice page".getBytes(StandardCharsets.US_ASCII);

  private final SecretKeySpec key;

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link #LEAST_BYTES}
   */
  public LinkKey(byte[] key) {
    if (key.length < LEAST_BYTES) {
      throw new IllegalArgumentException(
          "A link key has at least " + LEAST_BYTES + " bytes, not " + key.length);
    }
    this.key = new SecretKeySpec(key, "HmacSHA256");
  }

  /**
   * @param until the link opens nothing from then on; whole seconds
   */
  public String token(UUID notice, Instant until) {
    ByteBuffer token = ByteBuffer.allocate(HEAD + MAC);
    token
        .put(FORMAT)
        .putLong(notice.getMostSignificantBits())
        .putLong(notice.getLeastSignificantBits())
        .putLong(until.getEpochSecond());
    token.put(mac(token.array()));
    return Base64.getUrlEncoder().withoutPadding().encodeToString(token.array());
  }

  /**
   * The notice that a token opens; empty for one that was not made with this key, was changed, or
   * has ended. Why is not said: nothing is to be learned from trying.
   */
  public Optional<UUID> open(String token, Instant now) {
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
    UUID notice = new UUID(read.getLong(), read.getLong());
    long until = read.getLong();
    byte[] given = new byte[MAC];
    read.get(given);
    boolean genuine = MessageDigest.isEqual(given, mac(bytes));
    return genuine && now.getEpochSecond() < until ? Optional.of(notice) : Optional.empty();
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
