package org.tapeline.journal.token;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Makes and reads the tokens of links for people who cannot sign in. A token is base64url (RFC
 * 4648, no padding) of format byte, content, and the HMAC-SHA-256 (RFC 2104) of purpose, format
 * byte and content: one that was made for another purpose with the same key opens nothing. Anybody
 * can read the content; nobody without the key can make or change it.
 */
public final class SignedTokens {
  /** A key shorter than the hash weakens it (RFC 2104, section 3). */
  public static final int LEAST_BYTES = 32;

  private static final byte FORMAT = 1;
  private static final int MAC = 32;

  private final SecretKeySpec key;
  private final byte[] purpose;

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link #LEAST_BYTES}
   */
  public SignedTokens(byte[] key, String purpose) {
    if (key.length < LEAST_BYTES) {
      throw new IllegalArgumentException(
          "The key for the "
              + purpose
              + " has at least "
              + LEAST_BYTES
              + " bytes, not "
              + key.length);
    }
    this.key = new SecretKeySpec(key, "HmacSHA256");
    this.purpose = purpose.getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * The key that a setting gives; where it gives none, one that ends with the process.
   *
   * @param madeAtStart told in that case, to say what will stop working
   */
  public static byte[] key(Optional<String> secret, Runnable madeAtStart) {
    return secret
        .map(text -> text.getBytes(StandardCharsets.UTF_8))
        .orElseGet(
            () -> {
              madeAtStart.run();
              byte[] made = new byte[LEAST_BYTES];
              new SecureRandom().nextBytes(made);
              return made;
            });
  }

  public String seal(byte[] content) {
    byte[] token = new byte[1 + content.length + MAC];
    token[0] = FORMAT;
    System.arraycopy(content, 0, token, 1, content.length);
    System.arraycopy(mac(token), 0, token, token.length - MAC, MAC);
    return encoded(token);
  }

  /**
   * The content; empty for a token that was not made with this key and purpose, was changed, or is
   * written in any other way than it was given out. Why is not said, and every wrong token is
   * weighed against a signature: nothing is to be learned from trying.
   */
  public Optional<byte[]> open(String token) {
    byte[] bytes =
        decoded(token).filter(t -> t.length >= 1 + MAC).orElseGet(() -> new byte[1 + MAC]);
    byte[] given = Arrays.copyOfRange(bytes, bytes.length - MAC, bytes.length);
    boolean genuine = MessageDigest.isEqual(given, mac(bytes));
    return genuine && bytes[0] == FORMAT
        ? Optional.of(Arrays.copyOfRange(bytes, 1, bytes.length - MAC))
        : Optional.empty();
  }

  /**
   * The decoder lets padding and spare bits at the end pass: one token would have many spellings.
   */
  private static Optional<byte[]> decoded(String token) {
    try {
      byte[] bytes = Base64.getUrlDecoder().decode(token);
      return encoded(bytes).equals(token) ? Optional.of(bytes) : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static String encoded(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Of all but the last {@link #MAC} bytes. */
  private byte[] mac(byte[] token) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(key);
      mac.update(purpose);
      mac.update(token, 0, token.length - MAC);
      return mac.doFinal();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every JDK has HMAC-SHA-256", e);
    }
  }
}
