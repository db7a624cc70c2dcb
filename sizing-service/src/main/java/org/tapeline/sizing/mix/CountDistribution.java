package org.tapeline.sizing.mix;

import java.util.Arrays;
import java.util.List;

/**
 * The distribution of a count. What is left out at both ends is less than the rounding of a double.
 *
 * @param least the smallest count that has a chance worth keeping
 * @param chances of {@code least}, {@code least + 1} and so on; they sum to 1 but for rounding
 */
public record CountDistribution(int least, double[] chances) {
  /** Below the rounding of a double beside 1. */
  static final double NEGLIGIBLE = 1e-18;

  static final CountDistribution NONE = new CountDistribution(0, new double[] {1});

  public CountDistribution {
    chances = chances.clone();
  }

  @Override
  public double[] chances() {
    return chances.clone();
  }

  public double chance(int count) {
    int i = count - least;
    return i < 0 || i >= chances.length ? 0 : chances[i];
  }

  public double mean() {
    double mean = 0;
    for (int i = 0; i < chances.length; i++) {
      mean += chances[i] * (least + i);
    }
    return mean;
  }

  /** The chance of this count or fewer. */
  public double atMost(int count) {
    double sum = 0;
    for (int i = 0; i < chances.length && least + i <= count; i++) {
      sum += chances[i];
    }
    return sum;
  }

  /** The smallest count that is reached or not exceeded with at least this chance. */
  public int quantile(double share) {
    double sum = 0;
    for (int i = 0; i < chances.length; i++) {
      sum += chances[i];
      if (sum >= share) {
        return least + i;
      }
    }
    return least + chances.length - 1;
  }

  /** How many are expected to be missing when there are so many. */
  public double expectedShort(int there) {
    double missing = 0;
    for (int i = 0; i < chances.length; i++) {
      missing += chances[i] * Math.max(0, least + i - there);
    }
    return missing;
  }

  /** The sum of two independent counts. */
  CountDistribution plus(CountDistribution other) {
    double[] sum = new double[chances.length + other.chances.length - 1];
    for (int i = 0; i < chances.length; i++) {
      for (int j = 0; j < other.chances.length; j++) {
        sum[i + j] += chances[i] * other.chances[j];
      }
    }
    return trimmed(least + other.least, sum);
  }

  /** One of them, each with the same chance. */
  static CountDistribution mixed(List<CountDistribution> several) {
    int from = several.stream().mapToInt(CountDistribution::least).min().orElseThrow();
    int to = several.stream().mapToInt(c -> c.least + c.chances.length).max().orElseThrow();
    double[] mixed = new double[to - from];
    for (CountDistribution one : several) {
      for (int i = 0; i < one.chances.length; i++) {
        mixed[one.least + i - from] += one.chances[i] / several.size();
      }
    }
    return trimmed(from, mixed);
  }

  static CountDistribution trimmed(int least, double[] chances) {
    int from = 0;
    int to = chances.length;
    while (from + 1 < to && chances[from] < NEGLIGIBLE) {
      from++;
    }
    while (to - 1 > from && chances[to - 1] < NEGLIGIBLE) {
      to--;
    }
    return new CountDistribution(least + from, Arrays.copyOfRange(chances, from, to));
  }
}
