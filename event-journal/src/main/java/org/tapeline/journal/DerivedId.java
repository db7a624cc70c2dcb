package org.tapeline.journal;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.tapeline.journal.store.Sha256;

/**
 * Ids that follow from their cause, so that a step that is done again makes the same ids. The form
 * is that of UUID version 7 (RFC 9562): the time is the cause's, the rest a SHA-256 of the name.
 */
public final class DerivedId {
  private static final long TIME = 0xFFFF_FFFF_FFFF_0000L;

  private DerivedId() {}

  /**
   * @param cause the id that leads to the new one
   * @param name what is made of it, such as {@code open-refit/refit-12/0}
   */
  public static UUID from(UUID cause, String name) {
    ByteBuffer hash =
        ByteBuffer.wrap(
            new Sha256().add(cause).add(name.getBytes(StandardCharsets.UTF_8)).digest());
    long high = (cause.getMostSignificantBits() & TIME) | 0x7000L | (hash.getLong() & 0x0FFFL);
    long low = 0x8000_0000_0000_0000L | (hash.getLong() >>> 2);
    return new UUID(high, low);
  }
}
