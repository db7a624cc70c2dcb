package org.tapeline.inventory.outlook;

import java.util.random.RandomGenerator;

/** Counts drawn at random. */
final class Draws {
  private Draws() {}

  /**
   * How many of n happen, each with chance p, exactly: by jumping from one that happens to the
   * next.
   */
  static int binomial(int n, double p, RandomGenerator random) {
    if (p <= 0 || n == 0) {
      return 0;
    }
    if (p >= 1) {
      return n;
    }
    double log = Math.log1p(-p);
    int happened = 0;
    double at = jump(random, log);
    while (at <= n) {
      happened++;
      at += jump(random, log);
    }
    return happened;
  }

  /** How many tries until the next one that happens, 1 or more. */
  private static double jump(RandomGenerator random, double log) {
    return Math.floor(Math.log(1 - random.nextDouble()) / log) + 1;
  }

  /** A need, rounded to helmets and never below none. */
  static int need(double mean, double sd, RandomGenerator random) {
    return (int) Math.max(0, Math.round(mean + sd * random.nextGaussian()));
  }
}
