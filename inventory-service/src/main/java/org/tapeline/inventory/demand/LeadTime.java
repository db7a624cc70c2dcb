package org.tapeline.inventory.demand;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What is known of how long something takes to come: the logarithm of the days is normal, with a
 * normal-inverse-gamma distribution of its mean and variance. Each arrival updates it exactly; the
 * next one follows Student's t in the logarithm.
 *
 * @param location mean of the logarithm of the days
 * @param arrivals as if that mean came from so many arrivals, above 0
 * @param shape of the inverse gamma distribution of the variance, above 1
 * @param scale of the same, above 0
 */
public record LeadTime(double location, double arrivals, double shape, double scale) {
  /** What comes on the same day is counted as a quarter of one. */
  private static final double SHORTEST = 0.25;

  private static final double PRIOR_SHAPE = 4;
  private static final int POINTS = 25;

  /**
   * Before anything was seen.
   *
   * @param days as the policy has it
   * @param arrivals as many arrivals the policy is worth
   * @param spread standard deviation of the logarithm: .3 is about 30 % more or less
   */
  public static LeadTime around(double days, double arrivals, double spread) {
    return new LeadTime(
        Math.log(Math.max(SHORTEST, days)),
        arrivals,
        PRIOR_SHAPE,
        (PRIOR_SHAPE - 1) * spread * spread);
  }

  public LeadTime after(double days) {
    double log = Math.log(Math.max(SHORTEST, days));
    double off = log - location;
    return new LeadTime(
        location + off / (arrivals + 1),
        arrivals + 1,
        shape + 0.5,
        scale + arrivals * off * off / (2 * (arrivals + 1)));
  }

  public LeadTime after(List<Double> days) {
    LeadTime known = this;
    for (double one : days) {
      known = known.after(one);
    }
    return known;
  }

  /** Half of them come sooner. */
  public double medianDays() {
    return Math.exp(location);
  }

  /** Days, each as likely as the others: the middle of each of 25 equal parts. */
  public List<Double> days() {
    TDistribution t = TDistribution.of(2 * shape);
    double width = Math.sqrt(scale * (arrivals + 1) / (shape * arrivals));
    return IntStream.range(0, POINTS)
        .mapToObj(
            i -> Math.exp(location + width * t.inverseCumulativeProbability((i + 0.5) / POINTS)))
        .toList();
  }
}
