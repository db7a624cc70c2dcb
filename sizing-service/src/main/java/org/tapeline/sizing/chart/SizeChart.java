package org.tapeline.sizing.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.tapeline.sizing.units.Millimetres;

/**
 * The sizes of a helmet model, from small to large. Gaps between sizes are allowed, overlaps are
 * not.
 *
 * @param model code of the model, such as {@code model-a}
 * @param version rises by one with each publication
 */
public record SizeChart(String model, int version, List<SizeRange> sizes) {

  public SizeChart {
    sizes = sizes.stream().sorted(Comparator.comparing(SizeRange::from)).toList();
    List<String> faults = faults(sizes);
    if (sizes.isEmpty() || version < 1 || !faults.isEmpty()) {
      throw new IllegalArgumentException(model + ": " + faults);
    }
  }

  /** What keeps these ranges from being a chart, one sentence each. */
  public static List<String> faults(List<SizeRange> ranges) {
    List<SizeRange> sorted = ranges.stream().sorted(Comparator.comparing(SizeRange::from)).toList();
    List<String> faults = new ArrayList<>();
    for (int i = 1; i < sorted.size(); i++) {
      SizeRange lower = sorted.get(i - 1);
      SizeRange upper = sorted.get(i);
      if (lower.overlaps(upper)) {
        faults.add(lower.said() + " and " + upper.said() + " overlap");
      }
    }
    if (sorted.stream().map(SizeRange::size).distinct().count() < sorted.size()) {
      faults.add("A size is named twice");
    }
    return faults;
  }

  /** By words and ranges; what converting between units makes of a number is no difference. */
  public boolean sameSizesAs(SizeChart other) {
    return sizes.size() == other.sizes.size()
        && IntStream.range(0, sizes.size()).allMatch(i -> sizes.get(i).sameAs(other.sizes.get(i)));
  }

  /**
   * Where the size at this place, counted from the smallest at 0, gives way to the next: a head
   * between two sizes is for the smaller one (common practice, no published source). The end of the
   * largest size is that of the chart.
   */
  public Millimetres endOf(int size) {
    return size + 1 < sizes.size() ? sizes.get(size + 1).from() : sizes.get(size).to();
  }
}
