package org.tapeline.sizing.measurer;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * The technical error of measurement of one measurer: the standard deviation of a single reading,
 * TEM = sqrt(sum of d² / 2N) over N pairs of readings of the same head. What a measurer's own pairs
 * say is mixed with what is assumed of anybody, so that a few lucky pairs prove nothing: the
 * variance has a scaled inverse chi-squared prior worth {@value #PRIOR_PAIRS} pairs.
 *
 * @param pairs how many heads were read at least twice
 * @param sumOfSquares of the differences of their first two readings, mm²
 */
public record RepeatError(long pairs, double sumOfSquares) {
  /**
   * Assumed of a measurer of whom nothing is known, mm: at 2 mm about one pair in thirteen needs a
   * third reading (P = .0771, docs/references.md, B).
   */
  public static final double ASSUMED_MM = 2.0;

  /** Above this a measurer should practise, or the tape is worn: at 3 mm one pair in four. */
  public static final double LARGE_MM = 3.0;

  private static final double PRIOR_PAIRS = 20;
  private static final double SURELY = 0.9;

  /** Nothing is known of the measurer. */
  public static final RepeatError UNKNOWN = new RepeatError(0, 0);

  /** From the pairs alone; not a number when there are none. */
  public double observedMm() {
    return Math.sqrt(sumOfSquares / (2 * pairs));
  }

  /** From the pairs and what is assumed of anybody, mm. */
  public double mm() {
    return Math.sqrt(sumOfVariances() / (PRIOR_PAIRS + pairs));
  }

  /** The error below which the measurer's true one lies with this chance, 0 to 1. */
  public double below(double chance) {
    ChiSquaredDistribution chi = ChiSquaredDistribution.of(PRIOR_PAIRS + pairs);
    return Math.sqrt(sumOfVariances() / chi.inverseCumulativeProbability(1 - chance));
  }

  /** Whether it is clear that single readings are worse than they should be. */
  public boolean large() {
    return below(1 - SURELY) > LARGE_MM;
  }

  private double sumOfVariances() {
    return PRIOR_PAIRS * ASSUMED_MM * ASSUMED_MM + sumOfSquares / 2;
  }
}
