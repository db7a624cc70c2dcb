package org.tapeline.sizing.advice;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.units.Interval95;
import org.tapeline.sizing.units.Millimetres;

/**
 * How likely each size of a model is the one for a head that is known only so well. A head between
 * two sizes counts for the smaller one.
 *
 * @param sizes one for each size of the chart, small to large
 * @param below the chance that the head is too small for the model
 * @param above the chance that it is too large
 */
public record SizeChances(List<Chance> sizes, double below, double above) {
  /** So that a tape without any error still has a distribution, mm. */
  private static final double LEAST_SPREAD_MM = 1e-6;

  /** A size with its chance, 0 to 1. */
  public record Chance(String size, double chance) {}

  public SizeChances {
    sizes = List.copyOf(sizes);
  }

  /**
   * @param uncertainty half the width of the 95 % interval around the head, normal
   */
  static SizeChances of(SizeChart chart, Millimetres head, Millimetres uncertainty) {
    double spread = Math.max(Interval95.spread(uncertainty.value()), LEAST_SPREAD_MM);
    return of(chart, NormalDistribution.of(head.value(), spread));
  }

  private static SizeChances of(SizeChart chart, NormalDistribution head) {
    List<SizeRange> ranges = chart.sizes();
    List<Chance> sizes = new ArrayList<>();
    for (int i = 0; i < ranges.size(); i++) {
      double from = ranges.get(i).from().value();
      double to = chart.endOf(i).value();
      sizes.add(new Chance(ranges.get(i).size(), head.probability(from, to)));
    }
    return new SizeChances(
        sizes,
        head.cumulativeProbability(ranges.getFirst().from().value()),
        head.survivalProbability(ranges.getLast().to().value()));
  }
}
