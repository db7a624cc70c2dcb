package org.tapeline.journal;

import com.fasterxml.uuid.Generators;
import com.fasterxml.uuid.impl.TimeBasedEpochGenerator;
import java.util.UUID;

/** Ids that sort by the time at which they were made (RFC 9562, version 7). */
public final class UuidV7 {
  private static final TimeBasedEpochGenerator GENERATOR = Generators.timeBasedEpochGenerator();

  private UuidV7() {}

  public static UUID next() {
    return GENERATOR.generate();
  }
}
