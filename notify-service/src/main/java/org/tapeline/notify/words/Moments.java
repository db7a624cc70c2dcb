package org.tapeline.notify.words;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** Dates and times as a reader of a language writes them, in the time of the place. */
public final class Moments {
  private Moments() {}

  /** Such as {@code Saturday, September 13} or {@code sábado 13 de septiembre}. */
  public static String date(Instant instant, ZoneId zone, Language language) {
    return format(instant, zone, language, language.datePattern());
  }

  /** Such as {@code 9:40 AM}. */
  public static String time(Instant instant, ZoneId zone, Language language) {
    return format(instant, zone, language, language.timePattern());
  }

  private static String format(Instant instant, ZoneId zone, Language language, String pattern) {
    // The JDK's locale data puts narrow and no-break spaces in times, which old mail programs show
    // as question marks.
    return DateTimeFormatter.ofPattern(pattern, language.locale())
        .format(instant.atZone(zone))
        .replace('\u202f', ' ')
        .replace('\u00a0', ' ');
  }
}
