package org.tapeline.inventory.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Bars that are made of parts, such as helmets by year, each bar by size.
 *
 * @param title what the picture is of
 * @param says the same in a sentence or two, for who does not see it
 * @param unit what is counted
 * @param barSaid what a bar is, such as {@code Season}
 * @param bars by label, in order; each by the name of its part, in order from the ground up
 */
public record StackedBars(
    String title, String says, String unit, String barSaid, Map<String, Map<String, Double>> bars) {
  private static final int MOST = 4;
  private static final String OTHERS = "others";

  /**
   * @throws IllegalArgumentException without a bar, or for a part that is below none
   */
  public StackedBars {
    Map<String, Map<String, Double>> copy = new LinkedHashMap<>();
    bars.forEach((label, parts) -> copy.put(label, new LinkedHashMap<>(parts)));
    bars = Collections.unmodifiableMap(copy);
    if (bars.isEmpty()
        || bars.values().stream().flatMap(p -> p.values().stream()).anyMatch(n -> !(n >= 0))) {
      throw new IllegalArgumentException("A chart needs bars, of parts that are 0 or more");
    }
  }

  /** The names of all parts, from the ground up. */
  List<String> parts() {
    Set<String> names = new LinkedHashSet<>();
    bars.values().forEach(parts -> names.addAll(parts.keySet()));
    return List.copyOf(names);
  }

  /** What is told apart in the drawing: at most four parts, the last of them all others. */
  List<String> drawn() {
    List<String> all = parts();
    if (all.size() <= MOST) {
      return all;
    }
    List<String> drawn = new ArrayList<>(all.subList(0, MOST - 1));
    drawn.add(OTHERS);
    return drawn;
  }

  double value(String bar, String part) {
    return bars.get(bar).getOrDefault(part, 0.0);
  }

  /** The height of a drawn part. */
  double height(String bar, String drawn) {
    List<String> all = parts();
    return all.size() > MOST && drawn.equals(OTHERS)
        ? all.subList(MOST - 1, all.size()).stream().mapToDouble(p -> value(bar, p)).sum()
        : value(bar, drawn);
  }

  double total(String bar) {
    return bars.get(bar).values().stream().mapToDouble(n -> n).sum();
  }
}
