package org.tapeline.sizing.mix;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** How many of independent chances come true: exact, by convolution. */
final class PoissonBinomial {
  private static final double NEGLIGIBLE = 1e-18;

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
      while (from < to && counts[from] < NEGLIGIBLE) {
        counts[from++] = 0;
      }
      while (to > from && counts[to] < NEGLIGIBLE) {
        to--;
      }
    }
    return new CountDistribution(from, Arrays.copyOfRange(counts, from, to + 1));
  }

  /** Of so many alike: a binomial distribution. */
  static CountDistribution ofAlike(int many, double chance) {
    BinomialDistribution binomial = BinomialDistribution.of(many, Math.clamp(chance, 0, 1));
    double[] counts = new double[many + 1];
    for (int k = 0; k <= many; k++) {
      counts[k] = binomial.probability(k);
    }
    return CountDistribution.trimmed(0, counts);
  }
}
