package org.tapeline.inventory.demand;

import java.util.List;

/**
 * What is expected of the need for parts and helmets before anything was used, as data.
 *
 * @param seasonWeeks weeks of play that the shares are of
 * @param memoryWeeks what was used longer ago is forgotten
 * @param shape how many used pieces the expectation is worth
 */
public record DemandPrior(
    int seasonWeeks, int memoryWeeks, double shape, List<Share> parts, Share helmet) {

  public DemandPrior {
    if (seasonWeeks < 1 || memoryWeeks < 1 || !(shape > 0)) {
      throw new IllegalStateException("demand-prior.json needs weeks and a shape above 0");
    }
  }

  /**
   * The share of players who need an item in a season: fails x takesPart x wearers.
   *
   * @param fails share of helmets on which the check fails, 0 to 1
   * @param takesPart share of those that take the part
   * @param wearers share of players whose helmets take this one
   * @param source where the shares are from
   */
  public record Share(String item, double fails, double takesPart, double wearers, String source) {

    public Share {
      double all = fails * takesPart * wearers;
      if (item == null || source == null || source.isBlank() || !(all > 0) || all > 1) {
        throw new IllegalStateException(
            "demand-prior.json needs shares above 0 and up to 1, and their source: " + item);
      }
    }

    double inSeason() {
      return fails * takesPart * wearers;
    }
  }

  DemandRate rate(Share share) {
    return DemandRate.around(share.inSeason() / seasonWeeks, shape);
  }
}
