package org.tapeline.sizing.growth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Age as growth references count it. */
public final class Age {
  private static final double DAYS_IN_A_YEAR = 365.25;

  private Age() {}

  /** Years with their fraction; 0 before birth. */
  public static double years(LocalDate birth, LocalDate on) {
    return Math.max(0, ChronoUnit.DAYS.between(birth, on) / DAYS_IN_A_YEAR);
  }
}
