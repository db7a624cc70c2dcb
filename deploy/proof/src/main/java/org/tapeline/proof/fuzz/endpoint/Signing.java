package org.tapeline.proof.fuzz.endpoint;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Signs receipts as the gateway for text messages does: what is wrong in them shall be looked at,
 * not turned away at the door.
 */
public final class Signing {
  private static final String HMAC = "HmacSHA256";

  private final SecretKeySpec key;

  public Signing(String key) {
    this.key = new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), HMAC);
  }

  String of(String seconds, byte[] body) {
    try {
      Mac mac = Mac.getInstance(HMAC);
      mac.init(key);
      mac.update((seconds + ".").getBytes(StandardCharsets.US_ASCII));
      return HexFormat.of().formatHex(mac.doFinal(body));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every JDK has HMAC-SHA-256", e);
    }
  }
}
