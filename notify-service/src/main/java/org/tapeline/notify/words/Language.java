package org.tapeline.notify.words;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A language that every template exists in. */
public enum Language {
  ENGLISH("en", Locale.US, "EEEE, MMMM d", "AM", "PM"),
  SPANISH("es", Locale.of("es", "US"), "EEEE d 'de' MMMM", "a. m.", "p. m.");

  private final String code;
  private final Locale locale;
  private final String datePattern;
  private final Map<Long, String> halvesOfDay;

  Language(String code, Locale locale, String datePattern, String morning, String afternoon) {
    this.code = code;
    this.locale = locale;
    this.datePattern = datePattern;
    this.halvesOfDay = Map.of(0L, morning, 1L, afternoon);
  }

  /** BCP 47 primary tag. */
  public String code() {
    return code;
  }

  /** The language's name for staff. */
  public String inEnglish() {
    return Locale.of(code).getDisplayLanguage(Locale.ENGLISH);
  }

  public Locale locale() {
    return locale;
  }

  String datePattern() {
    return datePattern;
  }

  /** What stands after a time, before noon (0) and from noon on (1). */
  Map<Long, String> halvesOfDay() {
    return halvesOfDay;
  }

  /** The language of a BCP 47 tag such as {@code es-MX}; empty when no words exist in it. */
  public static Optional<Language> of(String tag) {
    String primary = Locale.forLanguageTag(tag).getLanguage();
    for (Language language : values()) {
      if (language.code.equals(primary)) {
        return Optional.of(language);
      }
    }
    return Optional.empty();
  }
}
