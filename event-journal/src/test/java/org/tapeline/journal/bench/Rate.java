package org.tapeline.journal.bench;

import java.util.Arrays;

/** How often something could be done in a second: the middle of some rounds. */
final class Rate {
  private static final int ROUNDS = 3;

  private Rate() {}

  /** One round: how many were done in how long. */
  interface Round {
    /**
     * @return how many a second
     */
    double run() throws Exception;
  }

  /**
   * Two rates, measured in turn, so that what else the machine does meets both.
   *
   * @return the middle of each
   */
  static double[] inTurn(Round one, Round other) throws Exception {
    double[] ones = new double[ROUNDS];
    double[] others = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      others[i] = other.run();
      ones[i] = one.run();
    }
    return new double[] {middle(ones), middle(others)};
  }

  static double of(long count, long startedNanos) {
    return count * 1e9 / (System.nanoTime() - startedNanos);
  }

  private static double middle(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
