package org.tapeline.notify.notice;

import java.util.Locale;

/** How somebody of the staff told a person. */
public enum ReachedBy {
  TELEPHONE,
  /** The printed slip was handed over. */
  SHEET;

  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * @throws IllegalArgumentException when there is no such way
   */
  public static ReachedBy of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }
}
