package org.tapeline.notify.words;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;

/** Dates and times as a reader of a language writes them, in the time of the place. */
public final class Moments {
  private Moments() {}

  /** Such as {@code Saturday, September 13} or {@code sábado 13 de septiembre}. */
  public static String date(Instant instant, ZoneId zone, Language language) {
    return DateTimeFormatter.ofPattern(language.datePattern(), language.locale())
        .format(instant.atZone(zone));
  }

  /**
   * Such as {@code 9:40 AM} or {@code 9:40 a. m.}; in words of our own, since those of the JDK
   * differ from version to version and hold spaces that old mail programs show as question marks.
   */
  public static String time(Instant instant, ZoneId zone, Language language) {
    return new DateTimeFormatterBuilder()
        .appendPattern("h:mm ")
        .appendText(ChronoField.AMPM_OF_DAY, language.halvesOfDay())
        .toFormatter(language.locale())
        .format(instant.atZone(zone));
  }
}
