package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * The part of the year in which helmets are worn.
 *
 * @param from its first day
 * @param to its last day, later in the same calendar year
 */
public record Season(MonthDay from, MonthDay to) {

  /**
   * @throws IllegalArgumentException for a season over the turn of the year, which this cannot tell
   */
  public Season {
    if (!to.isAfter(from)) {
      throw new IllegalArgumentException("A season ends later in the year than it begins");
    }
  }

  /** As month-day, such as {@code 08-01}. */
  static Season of(String from, String to) {
    return new Season(MonthDay.parse("--" + from), MonthDay.parse("--" + to));
  }

  public boolean holds(LocalDate day) {
    return !day.isBefore(from.atYear(day.getYear())) && !day.isAfter(to.atYear(day.getYear()));
  }

  /** The last day of the season that runs on that day, else of the next one. */
  public LocalDate endFrom(LocalDate day) {
    LocalDate end = to.atYear(day.getYear());
    return end.isBefore(day) ? to.atYear(day.getYear() + 1) : end;
  }

  /** The first day of the season that {@link #endFrom} ends. */
  public LocalDate startFrom(LocalDate day) {
    return from.atYear(endFrom(day).getYear());
  }
}
