package org.tapeline.inventory.demand;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.Supplier;

/**
 * How many pieces may be asked for, with the chance of each number. The mean is exact; of the tail
 * less than one in a thousand million is left out.
 */
public final class DemandCount {
  private static final double LEFT_OUT = 1e-9;
  private static final int MOST = 200_000;

  /** Below it a chance is far less than all that is left out. */
  private static final double LOG_OF_NOTHING = -70;

  private final double mean;
  private final Supplier<double[]> chances;
  private Table table;

  private DemandCount(Supplier<double[]> chances, double mean) {
    this.mean = mean;
    this.chances = chances;
  }

  /**
   * The chances added up.
   *
   * @param atMost the chance of so many or fewer
   * @param left these again, of all that are fewer
   */
  private record Table(double[] atMost, double[] left) {
    static Table of(double[] chances) {
      double[] atMost = new double[chances.length];
      double[] left = new double[chances.length + 1];
      double sum = 0;
      for (int k = 0; k < chances.length; k++) {
        sum += chances[k];
        atMost[k] = sum;
        left[k + 1] = left[k] + sum;
      }
      return new Table(atMost, left);
    }
  }

  /** Worked out when it is first needed: many a season is planned of which nobody asks. */
  private Table table() {
    if (table == null) {
      table = Table.of(chances.get());
    }
    return table;
  }

  /**
   * Poisson demand whose rate is uncertain by a gamma distribution.
   *
   * @param shape of the gamma distribution, above 0
   * @param mean pieces, 0 or more
   */
  public static DemandCount negativeBinomial(double shape, double mean) {
    double ratio = Math.log(mean / (shape + mean));
    return of(
        mean,
        shape * Math.log(shape / (shape + mean)),
        k -> ratio + Math.log((k + shape) / (k + 1)));
  }

  /**
   * Poisson demand of a known rate.
   *
   * @param mean pieces, 0 or more
   */
  public static DemandCount poisson(double mean) {
    return of(mean, -mean, k -> Math.log(mean / (k + 1)));
  }

  /** From chances that sum to 1, of 0, 1, 2 ... pieces. */
  static DemandCount ofChances(double[] chances) {
    double mean = 0;
    for (int k = 0; k < chances.length; k++) {
      mean += k * chances[k];
    }
    return new DemandCount(() -> chances, mean);
  }

  private static DemandCount of(double mean, double logNone, IntToDoubleFunction logStep) {
    return mean > 0
        ? new DemandCount(() -> chances(mean, logNone, logStep), mean)
        : new DemandCount(() -> new double[] {1}, 0);
  }

  /** Logarithms, since the chance of none is too small for a double when much is asked for. */
  private static double[] chances(double mean, double logNone, IntToDoubleFunction logStep) {
    double[] chances = new double[64];
    int count = 0;
    double log = logNone;
    double sum = 0;
    for (int k = 0; sum < 1 - LEFT_OUT && k < MOST; k++) {
      double chance = log < LOG_OF_NOTHING ? 0 : Math.exp(log);
      if (k > mean && chance < LEFT_OUT * LEFT_OUT) {
        break;
      }
      if (count == chances.length) {
        chances = Arrays.copyOf(chances, 2 * count);
      }
      chances[count++] = chance;
      sum += chance;
      log += logStep.applyAsDouble(k);
    }
    return Arrays.copyOf(chances, count);
  }

  /** One of them, each with the same chance. */
  public static DemandCount mixed(List<DemandCount> several) {
    int most = several.stream().mapToInt(d -> d.table().atMost.length).max().orElseThrow();
    double[] chances = new double[most];
    for (DemandCount one : several) {
      for (int k = 0; k < one.table().atMost.length; k++) {
        chances[k] += (one.atMost(k) - one.atMost(k - 1)) / several.size();
      }
    }
    return new DemandCount(
        () -> chances, several.stream().mapToDouble(d -> d.mean).average().orElseThrow());
  }

  public double mean() {
    return mean;
  }

  /** The chance of this number or fewer. */
  public double atMost(int pieces) {
    if (pieces < 0) {
      return 0;
    }
    double[] atMost = table().atMost;
    return pieces < atMost.length ? atMost[pieces] : 1;
  }

  /** The smallest number that is reached or not exceeded with at least this chance. */
  public int quantile(double chance) {
    double[] atMost = table().atMost;
    int k = 0;
    while (k < atMost.length - 1 && atMost[k] < chance) {
      k++;
    }
    return k;
  }

  /** How many pieces are expected to be missing when so many are there; less than 0 are owed. */
  public double expectedShort(int there) {
    if (there <= 0) {
      return mean - there;
    }
    int known = Math.min(there, table().atMost.length);
    return Math.max(0, mean - there + table().left[known] + (there - known));
  }
}
