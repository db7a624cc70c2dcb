package org.tapeline.fitting.fitday;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Makes and reads the tokens of calendar links, which name the fields that a calendar shows. A
 * token is base64url (RFC 4648, no padding) of format byte, field codes, and the HMAC-SHA-256 (RFC
 * 2104) of these. It has no end, since a calendar is subscribed to once; another key ends them all.
 */
final class FeedKey {
  /** A key shorter than the hash weakens it (RFC 2104, section 3). */
  static final int LEAST_BYTES = 32;

  private static final byte FORMAT = 1;
  private static final int MAC = 32;
  private static final String ALL = "*";
  private static final byte[] PURPOSE = "tapeline fit days".getBytes(StandardCharsets.US_ASCII);

  private final SecretKeySpec key;

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link #LEAST_BYTES}
   */
  FeedKey(byte[] key) {
    if (key.length < LEAST_BYTES) {
      throw new IllegalArgumentException(
          "A calendar key has at least " + LEAST_BYTES + " bytes, not " + key.length);
    }
    this.key = new SecretKeySpec(key, "HmacSHA256");
  }

  /**
   * Which fields a calendar shows.
   *
   * @param all every field, also those that come later; then {@code fields} is empty
   */
  record Scope(boolean all, Set<String> fields) {
    static final Scope ALL_FIELDS = new Scope(true, Set.of());

    Scope {
      fields = Set.copyOf(fields);
    }

    boolean shows(String field) {
      return all || fields.contains(field);
    }
  }

  String token(Scope scope) {
    String said = scope.all() ? ALL : String.join(" ", new TreeSet<>(scope.fields()));
    byte[] fields = said.getBytes(StandardCharsets.UTF_8);
    byte[] token = new byte[1 + fields.length + MAC];
    token[0] = FORMAT;
    System.arraycopy(fields, 0, token, 1, fields.length);
    System.arraycopy(mac(token), 0, token, token.length - MAC, MAC);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(token);
  }

  /**
   * What a token shows; empty for one that was not made with this key or was changed. Why is not
   * said: nothing is to be learned from trying.
   */
  Optional<Scope> open(String token) {
    byte[] bytes;
    try {
      bytes = Base64.getUrlDecoder().decode(token);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    if (bytes.length < 1 + MAC || bytes[0] != FORMAT) {
      return Optional.empty();
    }
    byte[] given = Arrays.copyOfRange(bytes, bytes.length - MAC, bytes.length);
    if (!MessageDigest.isEqual(given, mac(bytes))) {
      return Optional.empty();
    }
    String said = new String(bytes, 1, bytes.length - 1 - MAC, StandardCharsets.UTF_8);
    return Optional.of(
        said.equals(ALL) ? Scope.ALL_FIELDS : new Scope(false, Set.of(said.split(" "))));
  }

  /** Of all but the last {@link #MAC} bytes. */
  private byte[] mac(byte[] token) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(key);
      mac.update(PURPOSE);
      mac.update(token, 0, token.length - MAC);
      return mac.doFinal();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every JDK has HMAC-SHA-256", e);
    }
  }
}
