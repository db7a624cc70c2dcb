package org.tapeline.fitting.choice;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.Locale;
import java.util.Map;

/** A language in which a guardian can choose a slot, with dates and times as its readers write. */
enum ChoiceLanguage {
  ENGLISH("en", Locale.US, "EEEE, MMMM d", "AM", "PM"),
  SPANISH("es", Locale.of("es", "US"), "EEEE d 'de' MMMM", "a. m.", "p. m.");

  private final String code;
  private final Locale locale;
  private final DateTimeFormatter date;
  private final DateTimeFormatter time;

  ChoiceLanguage(String code, Locale locale, String date, String morning, String afternoon) {
    this.code = code;
    this.locale = locale;
    this.date = DateTimeFormatter.ofPattern(date, locale);
    this.time =
        new DateTimeFormatterBuilder()
            .appendPattern("h:mm ")
            .appendText(ChronoField.AMPM_OF_DAY, Map.of(0L, morning, 1L, afternoon))
            .toFormatter(locale);
  }

  /** The language of that code; English where no words exist in it. */
  static ChoiceLanguage of(String code) {
    for (ChoiceLanguage language : values()) {
      if (language.code.equals(code)) {
        return language;
      }
    }
    return ENGLISH;
  }

  /** Two letters (ISO 639-1). */
  String code() {
    return code;
  }

  /** Such as {@code Saturday, September 13}; at the start of a line. */
  String date(Instant instant, ZoneId zone) {
    String written = dateWithin(instant, zone);
    return written.substring(0, 1).toUpperCase(locale) + written.substring(1);
  }

  /** Such as {@code sábado 13 de septiembre}; in the middle of a sentence. */
  String dateWithin(Instant instant, ZoneId zone) {
    return date.format(instant.atZone(zone));
  }

  /** Such as {@code 9:40 AM}. */
  String time(Instant instant, ZoneId zone) {
    return time.format(instant.atZone(zone));
  }
}
