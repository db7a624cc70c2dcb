package org.tapeline.sizing.units;

/** The interval that holds a normal value in 95 of 100 cases: mean plus-minus its half width. */
public final class Interval95 {
  /** Standard deviations in half its width. */
  private static final double SPREADS = 1.959964;

  private Interval95() {}

  public static double halfWidth(double spread) {
    return SPREADS * spread;
  }

  public static double spread(double halfWidth) {
    return halfWidth / SPREADS;
  }
}
