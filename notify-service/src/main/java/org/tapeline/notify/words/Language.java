package org.tapeline.notify.words;

import java.util.Locale;
import java.util.Optional;

/** A language that every template exists in. */
public enum Language {
  ENGLISH("en", Locale.US, "EEEE, MMMM d", "h:mm a"),
  SPANISH("es", Locale.of("es", "US"), "EEEE d 'de' MMMM", "h:mm a");

  private final String code;
  private final Locale locale;
  private final String datePattern;
  private final String timePattern;

  Language(String code, Locale locale, String datePattern, String timePattern) {
    this.code = code;
    this.locale = locale;
    this.datePattern = datePattern;
    this.timePattern = timePattern;
  }

  /** BCP 47 primary tag. */
  public String code() {
    return code;
  }

  public Locale locale() {
    return locale;
  }

  String datePattern() {
    return datePattern;
  }

  String timePattern() {
    return timePattern;
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
