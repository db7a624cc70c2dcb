package org.tapeline.journal.quarkus.http;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * Days that somebody can mean: of the twentieth to the twenty-second century. What lies beyond is a
 * slip of the finger, and further out no column of the database holds it.
 */
public final class MeantDay {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  private MeantDay() {}

  /**
   * @param text such as {@code 2027-08-01}
   * @throws DateTimeException when it is no day or none that is meant
   */
  public static LocalDate parse(String text) {
    return checked(LocalDate.parse(text));
  }

  /**
   * @throws DateTimeException when it is not meant
   */
  public static LocalDate checked(LocalDate day) {
    if (day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR) {
      throw new DateTimeException("A day from " + FIRST_YEAR + " to " + LAST_YEAR + " is meant");
    }
    return day;
  }

  /**
   * @throws DateTimeException when its day is not meant
   */
  public static Instant checked(Instant moment) {
    checked(moment.atOffset(ZoneOffset.UTC).toLocalDate());
    return moment;
  }
}
