package org.tapeline.inventory.demand;

/** How many to have at the start when nothing comes until the season is over. */
public final class SeasonStock {
  private SeasonStock() {}

  /** The share of the season's demand that so many pieces serve. */
  public static double fillRate(DemandCount season, int pieces) {
    return season.mean() > 0 ? 1 - season.expectedShort(pieces) / season.mean() : 1;
  }

  /** The fewest pieces that serve the promised share, from 0 to below 1. */
  public static int keeping(double promised, DemandCount season) {
    int pieces = 0;
    while (fillRate(season, pieces) < promised) {
      pieces++;
    }
    return pieces;
  }
}
