package org.tapeline.fitting.helmet;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** When the certification of a helmet ends on the clock of a field. */
public final class CertificationEnd {
  private CertificationEnd() {}

  /**
   * The first moment at which it may not be worn.
   *
   * @param lastDay the last certified day
   */
  public static Instant after(LocalDate lastDay, ZoneId field) {
    return lastDay.plusDays(1).atStartOfDay(field).toInstant();
  }
}
