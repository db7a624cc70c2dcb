package org.tapeline.inventory.chart;

/** What a value and its range must be to be drawn. */
final class Bands {
  private Bands() {}

  static void check(double value, double low, double high) {
    if (!Double.isFinite(low) || !Double.isFinite(high) || !(low <= value && value <= high)) {
      throw new IllegalArgumentException("Not within its band: " + value + ", " + low + "-" + high);
    }
  }

  /** A number for a table: whole when it is whole, else with one decimal. */
  static String said(double value) {
    return value == Math.rint(value)
        ? String.valueOf((long) value)
        : String.valueOf(Math.round(value * 10) / 10.0);
  }
}
