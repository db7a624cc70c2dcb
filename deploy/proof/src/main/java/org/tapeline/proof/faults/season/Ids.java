package org.tapeline.proof.faults.season;

import java.util.Random;
import java.util.UUID;

/** Ids that follow from the seed. */
final class Ids {
  private static final long VERSION_4 = 0x4000L;

  private Ids() {}

  static UUID next(Random random) {
    long high = random.nextLong() & ~0xF000L | VERSION_4;
    long low = random.nextLong() & 0x3FFF_FFFF_FFFF_FFFFL | 0x8000_0000_0000_0000L;
    return new UUID(high, low);
  }
}
