package org.tapeline.inventory.outlook;

/**
 * How many of n helmets are rejected when the share is only known as Beta(a, b): after a prior and
 * what was counted, a rejected and b certified.
 */
public final class BetaBinomial {
  private BetaBinomial() {}

  /**
   * The chance of each count from 0 to n.
   *
   * @throws IllegalArgumentException for a negative n, or a or b that is not above 0
   */
  public static double[] chances(int n, double a, double b) {
    if (n < 0 || !(a > 0) || !(b > 0)) {
      throw new IllegalArgumentException("n is 0 or more, a and b are above 0");
    }
    double[] logs = new double[n + 1];
    for (int i = 0; i < n; i++) {
      logs[0] += Math.log((b + i) / (a + b + i));
    }
    for (int k = 0; k < n; k++) {
      logs[k + 1] = logs[k] + Math.log((n - k) * (a + k) / ((k + 1) * (b + n - k - 1)));
    }
    double[] chances = new double[n + 1];
    for (int k = 0; k <= n; k++) {
      chances[k] = Math.exp(logs[k]);
    }
    return chances;
  }

  /** The smallest count that is not exceeded with at least that chance. */
  public static int quantile(double[] chances, double chance) {
    double sum = 0;
    for (int k = 0; k < chances.length; k++) {
      sum += chances[k];
      if (sum >= chance) {
        return k;
      }
    }
    return chances.length - 1;
  }
}
