package org.tapeline.inventory.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.tapeline.inventory.chart.BandedBars;
import org.tapeline.inventory.chart.Charts;
import org.tapeline.inventory.chart.Picture;
import org.tapeline.inventory.chart.StackedBars;
import org.tapeline.inventory.helmet.Words;

/** The outlook's pictures: what is to buy, in all and by size, and how old the helmets are. */
final class OutlookCharts {
  private OutlookCharts() {}

  static List<Picture> of(OutlookView view) {
    List<Picture> charts = new ArrayList<>();
    if (view.isKnown()) {
      charts.add(Charts.of(inAll(view)));
      charts.add(Charts.of(bySize(view)));
    }
    if (!view.picture().made().isEmpty()) {
      charts.add(Charts.of(ages(view)));
    }
    return charts;
  }

  private static BandedBars inAll(OutlookView view) {
    List<Outlook.Year> years = view.picture().answer().inAll();
    Outlook.Year most =
        years.stream().max(Comparator.comparingInt(y -> y.buy().middle())).orElseThrow();
    return new BandedBars(
        "Helmets to buy for each season, all sizes.",
        "Most for " + most.season() + ": about " + most.buy().middle() + ".",
        "helmets",
        "as likely more as fewer",
        "5 to 95 %",
        "",
        years.stream()
            .map(
                y ->
                    new BandedBars.Bar(
                        String.valueOf(y.season()),
                        y.buy().middle(),
                        y.buy().low(),
                        y.buy().high(),
                        OptionalDouble.empty()))
            .toList());
  }

  private static StackedBars bySize(OutlookView view) {
    Map<String, Map<String, Double>> bars = new LinkedHashMap<>();
    for (Outlook.Year y : view.picture().answer().bySize()) {
      bars.computeIfAbsent(String.valueOf(y.season()), s -> new LinkedHashMap<>())
          .put(Words.code(y.size()), y.buy().mean());
    }
    return new StackedBars(
        "Helmets to buy for each season, by size.",
        "The average over all runs.",
        "helmets",
        "Season",
        bars);
  }

  private static StackedBars ages(OutlookView view) {
    Set<String> order = sizes(view);
    Map<String, Map<String, Double>> bars = new LinkedHashMap<>();
    view.picture()
        .made()
        .forEach(
            (year, sizes) -> {
              Map<String, Double> bar = new LinkedHashMap<>();
              order.forEach(
                  size -> bar.put(Words.code(size), (double) sizes.getOrDefault(size, 0)));
              bars.put(String.valueOf(year), bar);
            });
    return new StackedBars(
        "Helmets by the year in which they were made.",
        "Without those that are in quarantine, on hold or retired.",
        "helmets",
        "Made in",
        bars);
  }

  /** In the order of the other pictures, so that a size looks the same in all; then the rest. */
  private static Set<String> sizes(OutlookView view) {
    Set<String> order = new LinkedHashSet<>();
    view.picture().answer().bySize().forEach(y -> order.add(y.size()));
    view.picture().made().values().forEach(sizes -> order.addAll(sizes.keySet()));
    return order;
  }
}
