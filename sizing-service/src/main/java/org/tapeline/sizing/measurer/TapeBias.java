package org.tapeline.sizing.measurer;

import java.util.List;

/**
 * Whether somebody's tape reads too large or too small. Heads that others measured too say most:
 * the difference, less what the child will have grown. Where there are few of them, the heads that
 * the measurer alone saw say a little: children of a field differ, but not all in one direction.
 *
 * @param heads how many heads it rests on
 * @param mm how much the tape reads too large, mm; below 0 too small
 * @param errorMm standard error of that, mm
 */
public record TapeBias(long heads, double mm, double errorMm) {
  /** A bias that matters beside the width of a size, which is about 30 mm. */
  private static final double MATTERS_MM = 2;

  private static final double SURELY_95 = 1.959964;

  /**
   * One head that the measurer recorded.
   *
   * @param offMm how much larger it is than was to be expected, mm
   * @param spreadMm standard deviation of that for a tape without fault, mm, above 0
   */
  public record Head(double offMm, double spreadMm) {}

  /** The mean, in which each head weighs by its precision; zero without a bound for no heads. */
  public static TapeBias of(List<Head> heads) {
    double weights = 0;
    double sum = 0;
    for (Head head : heads) {
      double weight = 1 / (head.spreadMm() * head.spreadMm());
      weights += weight;
      sum += weight * head.offMm();
    }
    return weights == 0
        ? new TapeBias(0, 0, Double.POSITIVE_INFINITY)
        : new TapeBias(heads.size(), sum / weights, 1 / Math.sqrt(weights));
  }

  /** Half the width of the interval that holds the true bias in 95 of 100 cases, mm. */
  public double plusMinusMm() {
    return SURELY_95 * errorMm;
  }

  /** Whether it is clear that the tape is off by more than matters. */
  public boolean clear() {
    return Math.abs(mm) - plusMinusMm() > MATTERS_MM;
  }
}
