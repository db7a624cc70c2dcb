package org.tapeline.sizing.mix;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tapeline.sizing.chart.SizeChart;

/**
 * How many of each size of a model a roster needs on a day.
 *
 * @param known players whose head is known, among them {@code stale} measured more than a year
 *     before
 * @param unknown players whose head is not known
 */
public record Forecast(
    String model,
    int chartVersion,
    LocalDate day,
    int known,
    int stale,
    int unknown,
    List<Size> sizes) {
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /**
   * One size.
   *
   * @param expected mean of the count
   * @param low the count is below it in at most 5 of 100 cases
   * @param high the count is above it in at most 5 of 100 cases
   * @param usable helmets that are there
   * @param order how many more to get
   * @param atRisk expected cost of missing and left-over helmets once they are there
   */
  public record Size(
      String size, double expected, int low, int high, int usable, int order, double atRisk) {}

  static Forecast of(
      SizeChart chart,
      LocalDate day,
      Roster.OnDay roster,
      List<CountDistribution> counts,
      Map<String, Integer> usable,
      Newsvendor costs) {
    List<Size> sizes = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      String size = chart.sizes().get(i).size();
      CountDistribution need = counts.get(i);
      int there = usable.getOrDefault(size, 0);
      int order = costs.order(need, there);
      sizes.add(
          new Size(
              size,
              need.mean(),
              need.quantile(LOW),
              need.quantile(HIGH),
              there,
              order,
              costs.atRisk(need, there + order)));
    }
    return new Forecast(
        chart.model(),
        chart.version(),
        day,
        roster.known().size(),
        roster.stale(),
        roster.unknown().size(),
        sizes);
  }

  public int order() {
    return sizes.stream().mapToInt(Size::order).sum();
  }

  public double atRisk() {
    return sizes.stream().mapToDouble(Size::atRisk).sum();
  }
}
