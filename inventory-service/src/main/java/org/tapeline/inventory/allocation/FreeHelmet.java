package org.tapeline.inventory.allocation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A helmet that can be given to somebody.
 *
 * @param place where it is
 * @param daysLeft until its certification or its last age ends, whichever is first; 0 or more
 */
public record FreeHelmet(String tag, Kind kind, String place, int daysLeft) {

  /**
   * @throws IllegalArgumentException for one that may not be worn any more
   */
  public FreeHelmet {
    if (daysLeft < 0) {
      throw new IllegalArgumentException(tag + " may not be worn any more");
    }
  }

  /**
   * How many days it may be worn still. Where no label was read, the interval of its model counts
   * from the day on which it was made, and one whose interval is over has none left.
   *
   * @param certifiedMonths how long a certification of its model holds
   * @param lastAgeYears from this birthday on it is not worn
   * @return empty when it has reached its last age
   */
  static OptionalInt daysLeft(
      LocalDate today,
      LocalDate made,
      Optional<LocalDate> certifiedUntil,
      int certifiedMonths,
      int lastAgeYears) {
    LocalDate lastDay = made.plusYears(lastAgeYears).minusDays(1);
    if (lastDay.isBefore(today)) {
      return OptionalInt.empty();
    }
    LocalDate certified = certifiedUntil.orElse(made.plusMonths(certifiedMonths));
    LocalDate until = certified.isBefore(lastDay) ? certified : lastDay;
    return OptionalInt.of((int) Math.max(0, ChronoUnit.DAYS.between(today, until)));
  }
}
