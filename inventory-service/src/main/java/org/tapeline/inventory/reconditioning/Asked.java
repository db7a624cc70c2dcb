package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/**
 * For which days the list is asked.
 *
 * @param on on which it would be sent
 * @param by through which it is due
 */
record Asked(LocalDate on, LocalDate by) {
  private static final int MOST_YEARS = 10;

  /** Nothing said is today, and the end of the season that runs or comes next. */
  static Asked of(String on, String by, DueList due) {
    LocalDate today = due.today();
    LocalDate sent = day("on", on, today, today);
    return new Asked(sent, day("by", by, due.usualDay(), today));
  }

  private static LocalDate day(String field, String text, LocalDate otherwise, LocalDate today) {
    if (text == null || text.isBlank()) {
      return otherwise;
    }
    try {
      LocalDate day = LocalDate.parse(text.strip());
      if (!day.isBefore(today.minusYears(MOST_YEARS))
          && !day.isAfter(today.plusYears(MOST_YEARS))) {
        return day;
      }
    } catch (DateTimeParseException e) {
      // Said below, as for a day that is too far off.
    }
    throw Drafts.wrong(
        field, "Write a day within ten years as year-month-day, such as " + today + ".");
  }
}
