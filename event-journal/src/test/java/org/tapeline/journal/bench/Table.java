package org.tapeline.journal.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What was measured, each against its limit at several sizes of the data, and how it grows. */
final class Table {
  private final Map<String, List<Line>> lines = new LinkedHashMap<>();

  private record Line(int size, double ours, double limit) {}

  /**
   * @param size events in the journal before
   * @param rates ours and the limit's, a second
   */
  void add(String what, int size, double[] rates) {
    lines.computeIfAbsent(what, w -> new ArrayList<>()).add(new Line(size, rates[0], rates[1]));
  }

  void print() {
    System.out.printf(
        Locale.ROOT, "%-58s %9s %11s %11s %6s%n", "", "events", "a second", "limit", "ratio");
    lines.forEach(
        (what, sizes) -> {
          sizes.forEach(
              line ->
                  System.out.printf(
                      Locale.ROOT,
                      "%-58s %9d %11.0f %11.0f %6.2f%n",
                      what,
                      line.size,
                      line.ours,
                      line.limit,
                      line.ours / line.limit));
          System.out.printf(
              Locale.ROOT,
              "%-58s time for one grows with the data to the power of %.2f%n",
              "",
              exponent(sizes));
        });
  }

  /** The slope of the line through the logarithms, by least squares. */
  private static double exponent(List<Line> sizes) {
    double meanX = sizes.stream().mapToDouble(l -> Math.log(l.size)).average().orElseThrow();
    double meanY = sizes.stream().mapToDouble(l -> -Math.log(l.ours)).average().orElseThrow();
    double xy = 0;
    double xx = 0;
    for (Line line : sizes) {
      double x = Math.log(line.size) - meanX;
      xy += x * (-Math.log(line.ours) - meanY);
      xx += x * x;
    }
    return xy / xx;
  }
}
