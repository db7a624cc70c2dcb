package org.tapeline.inventory.demand;

/**
 * What is known of how often a player needs an item: a gamma distribution of pieces a player and
 * week. Poisson demand updates it exactly (the gamma is the Poisson's conjugate prior).
 *
 * @param shape how much is known, as if so many pieces had been seen; above 0
 * @param playerWeeks in so many weeks of play, times players; above 0
 */
public record DemandRate(double shape, double playerWeeks) {

  public DemandRate {
    if (!(shape > 0) || !(playerWeeks > 0)) {
      throw new IllegalArgumentException("Shape and player-weeks are above 0");
    }
  }

  /**
   * @param mean pieces a player and week, above 0
   */
  public static DemandRate around(double mean, double shape) {
    return new DemandRate(shape, shape / mean);
  }

  /** After so many pieces were used in so many player-weeks, both 0 or more. */
  public DemandRate after(double used, double seen) {
    return new DemandRate(shape + used, playerWeeks + seen);
  }

  /** Pieces a player and week. */
  public double mean() {
    return shape / playerWeeks;
  }

  /** What so many players may need in so many weeks. */
  public DemandCount demand(int players, double weeks) {
    return DemandCount.negativeBinomial(shape, mean() * players * weeks);
  }
}
