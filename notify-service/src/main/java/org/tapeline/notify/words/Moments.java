package org.tapeline.notify.words;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.Optional;

/** Dates and times as a reader of a language writes them, in the time of the place. */
public final class Moments {
  private Moments() {}

  /** Such as {@code Saturday, September 13} or {@code sábado 13 de septiembre}. */
  public static String date(Instant instant, ZoneId zone, Language language) {
    return dates(language).format(instant.atZone(zone));
  }

  /**
   * Such as {@code 9:40 AM} or {@code 9:40 a. m.}; in words of our own, since those of the JDK
   * differ from version to version and hold spaces that old mail programs show as question marks.
   */
  public static String time(Instant instant, ZoneId zone, Language language) {
    return times(language).format(instant.atZone(zone));
  }

  /** A date of {@link #date} in another language; empty for what is none. */
  static Optional<String> date(String written, Language from, Language to) {
    return again(written, dates(from), dates(to));
  }

  /** A time of {@link #time} in another language; empty for what is none. */
  static Optional<String> time(String written, Language from, Language to) {
    return again(written, times(from), times(to));
  }

  private static Optional<String> again(
      String written, DateTimeFormatter from, DateTimeFormatter to) {
    try {
      return Optional.of(to.format(from.parse(written)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static DateTimeFormatter dates(Language language) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(language.datePattern())
        .toFormatter(language.locale());
  }

  private static DateTimeFormatter times(Language language) {
    return new DateTimeFormatterBuilder()
        .appendPattern("h:mm ")
        .appendText(ChronoField.AMPM_OF_DAY, language.halvesOfDay())
        .toFormatter(language.locale());
  }
}
