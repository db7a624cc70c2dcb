package org.tapeline.notify.text;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Locale;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Signs requests to the gateway and checks its receipts: HMAC-SHA-256 (RFC 2104) over the time
 * stamp in epoch seconds, a full stop and the body's bytes, written as 64 hex digits. The time
 * stamp goes along in a header of its own; one that is off by more than the window is refused, so
 * that a recorded request is worth nothing later.
 */
final class Signatures {
  private final SecretKeySpec key;

  /**
   * @throws IllegalArgumentException for a key of less than 32 bytes, the length of the hash
   */
  Signatures(String key) {
    byte[] bytes = key.getBytes(StandardCharsets.UTF_8);
    if (bytes.length < 32) {
      throw new IllegalArgumentException(
          "The text gateway's signing key has at least 32 bytes, not " + bytes.length);
    }
    this.key = new SecretKeySpec(bytes, "HmacSHA256");
  }

  /**
   * @param seconds the time stamp as it stands in its header
   */
  String sign(String seconds, byte[] body) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(key);
      mac.update((seconds + ".").getBytes(StandardCharsets.US_ASCII));
      return HexFormat.of().formatHex(mac.doFinal(body));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every JDK has HMAC-SHA-256", e);
    }
  }

  boolean genuine(String seconds, byte[] body, String signature) {
    return MessageDigest.isEqual(
        sign(seconds, body).getBytes(StandardCharsets.US_ASCII),
        signature.strip().toLowerCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8));
  }

  /** Whether a time stamp lies within the window around now; false for one that is none. */
  static boolean fresh(String seconds, Instant now, Duration window) {
    return seconds.matches("[0-9]{1,12}")
        && Duration.between(Instant.ofEpochSecond(Long.parseLong(seconds)), now)
                .abs()
                .compareTo(window)
            <= 0;
  }
}
