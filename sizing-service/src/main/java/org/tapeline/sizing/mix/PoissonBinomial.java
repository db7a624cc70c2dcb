package org.tapeline.sizing.mix;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** How many of independent chances come true: exact, by convolution. */
final class PoissonBinomial {
  /** Beyond so many standard deviations and counts more nothing is left worth keeping. */
  private static final double FAR_SPREADS = 10;

  private static final double FAR_COUNTS = 40;

  private PoissonBinomial() {}

  static CountDistribution of(double[] chances) {
    double[] counts = new double[chances.length + 1];
    counts[0] = 1;
    int from = 0;
    int to = 0;
    for (double p : chances) {
      counts[++to] = 0;
      for (int k = to; k > from; k--) {
        counts[k] = counts[k] * (1 - p) + counts[k - 1] * p;
      }
      counts[from] *= 1 - p;
      while (from < to && counts[from] < CountDistribution.NEGLIGIBLE) {
        counts[from++] = 0;
      }
      while (to > from && counts[to] < CountDistribution.NEGLIGIBLE) {
        to--;
      }
    }
    return new CountDistribution(from, Arrays.copyOfRange(counts, from, to + 1));
  }

  /** Of so many alike: a binomial distribution. */
  static CountDistribution ofAlike(int many, double chance) {
    BinomialDistribution binomial = BinomialDistribution.of(many, Math.clamp(chance, 0, 1));
    double reach = FAR_SPREADS * Math.sqrt(binomial.getVariance()) + FAR_COUNTS;
    int from = (int) Math.max(0, binomial.getMean() - reach);
    int to = (int) Math.min(many, binomial.getMean() + reach);
    double[] counts = new double[to - from + 1];
    for (int k = from; k <= to; k++) {
      counts[k - from] = binomial.probability(k);
    }
    return CountDistribution.trimmed(from, counts);
  }
}
