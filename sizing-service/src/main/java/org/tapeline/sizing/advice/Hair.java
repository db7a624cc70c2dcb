package org.tapeline.sizing.advice;

import java.util.Locale;
import java.util.Optional;
import org.tapeline.sizing.units.Interval95;
import org.tapeline.sizing.units.Millimetres;

/**
 * Hair under the tape. How much it takes up is common practice without a published figure: long
 * hair a little, braids more, and both lie differently each time.
 */
public enum Hair {
  USUAL(0, ""),
  SHORT(0, ""),
  LONG(2, " Long hair lies differently each time: check the fit again when it changes."),
  BRAIDS(5, " Braids change the fit: check it again when they are done anew or undone.");

  private final double spreadMm;
  private final String caution;

  Hair(double spreadMm, String caution) {
    this.spreadMm = spreadMm;
    this.caution = caution;
  }

  /** Empty when it is no such word; {@link #USUAL} when nothing was said. */
  public static Optional<Hair> of(String code) {
    if (code == null || code.isBlank()) {
      return Optional.of(USUAL);
    }
    for (Hair hair : values()) {
      if (hair.code().equals(code)) {
        return Optional.of(hair);
      }
    }
    return Optional.empty();
  }

  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What is to be said with the advice; empty when there is nothing. */
  String caution() {
    return caution;
  }

  /** The half width of the 95 % interval, with what the hair adds to it. */
  Millimetres widen(Millimetres uncertainty) {
    return new Millimetres(Math.hypot(uncertainty.value(), Interval95.halfWidth(spreadMm)));
  }
}
