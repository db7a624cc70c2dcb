package org.tapeline.sizing.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Charts as the import takes them, to the last digit: importing them again changes nothing. */
public final class ChartCsv {
  private static final String HEADER = "model,size,from,to,unit\n";

  private ChartCsv() {}

  /**
   * @param units in which the charts were written, by model; mm where it is not known, unless only
   *     another unit says the ranges exactly
   */
  public static String write(List<SizeChart> charts, Map<String, ChartUnit> units) {
    return charts.stream()
        .map(chart -> rows(chart, unit(chart, Optional.ofNullable(units.get(chart.model())))))
        .collect(Collectors.joining("", HEADER, ""));
  }

  private static String rows(SizeChart chart, ChartUnit unit) {
    return chart.sizes().stream()
        .map(
            size ->
                String.join(
                    ",",
                    chart.model(),
                    size.size(),
                    unit.nearest(size.from()),
                    unit.nearest(size.to()),
                    unit.code()))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static ChartUnit unit(SizeChart chart, Optional<ChartUnit> known) {
    return Stream.concat(known.stream(), Stream.of(ChartUnit.values()))
        .filter(unit -> isExact(chart, unit))
        .findFirst()
        .orElse(ChartUnit.MILLIMETRE);
  }

  private static boolean isExact(SizeChart chart, ChartUnit unit) {
    return chart.sizes().stream()
        .flatMap(size -> Stream.of(size.from(), size.to()))
        .allMatch(end -> unit.write(end).isPresent());
  }
}
