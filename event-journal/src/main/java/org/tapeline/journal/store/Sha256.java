package org.tapeline.journal.store;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/** SHA-256 over fields, each preceded by its length so that no two lists of fields look alike. */
public final class Sha256 {
  private final MessageDigest digest;

  public Sha256() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java runtime has SHA-256", e);
    }
  }

  public Sha256 add(byte[] field) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(field.length).flip());
    digest.update(field);
    return this;
  }

  public Sha256 add(long field) {
    return add(ByteBuffer.allocate(Long.BYTES).putLong(field).array());
  }

  public Sha256 add(UUID field) {
    return add(
        ByteBuffer.allocate(2 * Long.BYTES)
            .putLong(field.getMostSignificantBits())
            .putLong(field.getLeastSignificantBits())
            .array());
  }

  public byte[] digest() {
    return digest.digest();
  }
}
