package org.tapeline.inventory.outlook;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Which share of helmets reconditioners reject: what is assumed beforehand, and what was counted.
 *
 * @param rejected counted as rejected so far
 * @param judged rejected or certified again so far
 */
public record RejectionShare(
    double priorRejected, double priorCertified, int rejected, int judged) {

  /**
   * @throws IllegalArgumentException when more were rejected than judged
   */
  public RejectionShare {
    if (rejected < 0 || judged < rejected || !(priorRejected > 0) || !(priorCertified > 0)) {
      throw new IllegalArgumentException("Of those judged, some or none are rejected");
    }
  }

  double a() {
    return priorRejected + rejected;
  }

  double b() {
    return priorCertified + judged - rejected;
  }

  public double mean() {
    return a() / (a() + b());
  }

  /** Equally likely shares, from the least to the greatest. */
  double[] spread(int count) {
    BetaDistribution beta = BetaDistribution.of(a(), b());
    double[] shares = new double[count];
    for (int i = 0; i < count; i++) {
      shares[i] = beta.inverseCumulativeProbability((i + 0.5) / count);
    }
    return shares;
  }

  /** The least share that the counts alone allow, at 95 % (Clopper-Pearson). */
  public double countedLow() {
    return rejected == 0
        ? 0
        : BetaDistribution.of(rejected, judged - rejected + 1.0).inverseCumulativeProbability(.025);
  }

  /** The greatest share that the counts alone allow, at 95 % (Clopper-Pearson). */
  public double countedHigh() {
    return rejected == judged
        ? 1
        : BetaDistribution.of(rejected + 1.0, judged - rejected).inverseCumulativeProbability(.975);
  }
}
