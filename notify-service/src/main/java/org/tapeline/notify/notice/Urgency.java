package org.tapeline.notify.notice;

import java.util.Locale;

/** How much haste a notice has, most first. */
public enum Urgency {
  /** Never held back. */
  DO_NOT_WEAR,
  SOON,
  NORMAL;

  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * @throws IllegalArgumentException when there is no such urgency
   */
  public static Urgency of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
