package org.tapeline.sizing.offset;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How much larger (or, below 0, smaller) heads count in a model than its chart says: a distribution
 * over the offsets from {@value #LEAST} to {@value #MOST} mm, learned from the sizes in which fit
 * checks really passed. It starts as a normal one around 0 with a standard deviation of {@value
 * #PRIOR_MM} mm, so that a few odd heads move it little.
 *
 * @param fits how many fits it has learned from
 * @param weights of the offsets from least to most, summing to 1
 */
public record OffsetPosterior(long fits, double[] weights) {
  private static final double LEAST = -15;
  private static final double MOST = 15;
  private static final int STEPS_A_MM = 2;
  private static final int STEPS = (int) (MOST - LEAST) * STEPS_A_MM + 1;
  private static final double PRIOR_MM = 4;

  /** Heads of one girth differ in form: an assumption, no source. */
  private static final double FORM_MM = 5;

  /** A likelihood of 0 would forbid an offset for ever because of one wrong entry. */
  private static final double SLIP = 0.02;

  private static final long FEWEST_FITS = 10;
  private static final double TAIL = 0.025;

  public OffsetPosterior {
    if (weights.length != STEPS) {
      throw new IllegalArgumentException(weights.length + " weights, not " + STEPS);
    }
    weights = weights.clone();
  }

  @Override
  public double[] weights() {
    return weights.clone();
  }

  /** Nothing learned yet. */
  public static OffsetPosterior prior() {
    NormalDistribution normal = NormalDistribution.of(0, PRIOR_MM);
    double[] weights = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      weights[i] = normal.density(offset(i));
    }
    return new OffsetPosterior(0, normed(weights));
  }

  /**
   * Learns from a fit that passed.
   *
   * @param headMm the head, with the standard deviation of its measurement
   * @param fromMm least head of the size that passed by the chart; minus infinity for the smallest
   * @param toMm least head of the next size; infinity for the largest
   */
  public OffsetPosterior after(double headMm, double spreadMm, double fromMm, double toMm) {
    double spread = Math.hypot(spreadMm, FORM_MM);
    double[] learned = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      NormalDistribution head = NormalDistribution.of(headMm + offset(i), spread);
      double passes = head.cumulativeProbability(toMm) - head.cumulativeProbability(fromMm);
      learned[i] = weights[i] * (SLIP + (1 - SLIP) * passes);
    }
    return new OffsetPosterior(fits + 1, normed(learned));
  }

  /** Its mean, mm. */
  public double mm() {
    double mean = 0;
    for (int i = 0; i < STEPS; i++) {
      mean += weights[i] * offset(i);
    }
    return mean;
  }

  /** Lower end of the 95 % credible interval, mm. */
  public double lowMm() {
    return quantile(TAIL);
  }

  /** Upper end of the 95 % credible interval, mm. */
  public double highMm() {
    return quantile(1 - TAIL);
  }

  /** What advice adds to a head, whole mm: 0 until the interval leaves 0 out. */
  public int appliedMm() {
    boolean clear = fits >= FEWEST_FITS && (lowMm() > 0 || highMm() < 0);
    return clear ? (int) Math.round(mm()) : 0;
  }

  private double quantile(double share) {
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      sum += weights[i];
      if (sum >= share) {
        return offset(i);
      }
    }
    return MOST;
  }

  private static double offset(int step) {
    return LEAST + (double) step / STEPS_A_MM;
  }

  private static double[] normed(double[] weights) {
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(w -> w / sum).toArray();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OffsetPosterior that
        && fits == that.fits
        && Arrays.equals(weights, that.weights);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(weights);
  }

  @Override
  public String toString() {
    return "%.1f mm (%.1f to %.1f), %d fits".formatted(mm(), lowMm(), highMm(), fits);
  }
}
