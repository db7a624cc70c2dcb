package org.tapeline.sizing.growth;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The distribution of a measure at one age by the LMS method (Cole 1990, from memory): a Box-Cox
 * power L makes it normal around the median M with the coefficient of variation S.
 *
 * @param l power; near 0 the logarithm takes its place
 * @param m median, millimetres, above 0
 * @param s coefficient of variation, above 0
 */
record Lms(double l, double m, double s) {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final double NEARLY_ZERO = 1e-9;

  double z(double mm) {
    return Math.abs(l) < NEARLY_ZERO ? Math.log(mm / m) / s : (Math.pow(mm / m, l) - 1) / (l * s);
  }

  double atZ(double z) {
    return Math.abs(l) < NEARLY_ZERO ? m * Math.exp(s * z) : m * Math.pow(1 + l * s * z, 1 / l);
  }

  /** The share of children with a smaller value, 0 to 1. */
  double below(double mm) {
    return NORMAL.cumulativeProbability(z(mm));
  }

  /** Between two ages the three parameters lie on a straight line. */
  Lms towards(Lms other, double share) {
    return new Lms(l + share * (other.l - l), m + share * (other.m - m), s + share * (other.s - s));
  }
}
