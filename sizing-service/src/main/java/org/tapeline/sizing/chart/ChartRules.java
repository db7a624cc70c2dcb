package org.tapeline.sizing.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/**
 * What has to be right between the rows of one model. Of two rows that do not go together the later
 * one in the file is named.
 */
final class ChartRules {
  private static final double WIDEST_GAP_MM = 10;

  private ChartRules() {}

  /** What keeps the rows from being a chart. */
  static List<RowError> faults(List<ChartLine> lines) {
    List<RowError> faults = new ArrayList<>();
    twice(lines, faults);
    unitMix(lines, faults);
    List<ChartLine> sorted = sorted(lines);
    overlaps(sorted, faults);
    order(sorted, faults);
    return faults;
  }

  /** Gaps of more than 10 mm: helmet makers leave small ones, a wide one may be a slip. */
  static List<RowError> warnings(List<ChartLine> lines) {
    List<ChartLine> sorted = sorted(lines);
    List<RowError> warnings = new ArrayList<>();
    for (int i = 1; i < sorted.size(); i++) {
      ChartLine lower = sorted.get(i - 1);
      ChartLine upper = sorted.get(i);
      double gap = upper.range().from().value() - lower.range().to().value();
      if (gap > WIDEST_GAP_MM + SizeRange.NOTHING_MM) {
        String between = lower.said() + " and " + upper.said() + " leave ";
        String check = " mm without a size. Compare both with the helmet maker's chart.";
        warnings.add(upper.row().error("from", between + Math.round(gap) + check));
      }
    }
    return warnings;
  }

  private static void twice(List<ChartLine> lines, List<RowError> faults) {
    Map<String, Row> seen = new HashMap<>();
    for (ChartLine line : lines) {
      Row first = seen.putIfAbsent(line.range().size(), line.row());
      if (first != null) {
        String said = line.range().said() + " stands twice for the model, first in row ";
        faults.add(line.row().error("size", said + first.line() + ". Keep one of them."));
      }
    }
  }

  private static void unitMix(List<ChartLine> lines, List<RowError> faults) {
    for (ChartLine line : lines) {
      ChartUnit first = lines.getFirst().unit();
      if (line.unit() != first) {
        String convert = "A chart uses one unit in all rows. Write this one in ";
        faults.add(line.row().error("unit", convert + first.code() + " too."));
      }
    }
  }

  private static void overlaps(List<ChartLine> sorted, List<RowError> faults) {
    for (int i = 1; i < sorted.size(); i++) {
      ChartLine lower = sorted.get(i - 1);
      ChartLine upper = sorted.get(i);
      if (lower.range().overlaps(upper.range())) {
        String said = lower.said() + " and " + upper.said() + " overlap. ";
        String both = "Both ends belong to a size: end one before the other starts.";
        faults.add(later(lower, upper).error("from", said + both));
      }
    }
  }

  private static void order(List<ChartLine> sorted, List<RowError> faults) {
    for (int i = 1; i < sorted.size(); i++) {
      ChartLine upper = sorted.get(i);
      sorted.subList(0, i).stream()
          .filter(lower -> upper.word().isBelow(lower.word()))
          .findFirst()
          .ifPresent(lower -> faults.add(outOfOrder(lower, upper)));
    }
  }

  private static RowError outOfOrder(ChartLine lower, ChartLine upper) {
    String said = upper.said() + " lies above " + lower.said() + ", against its word. ";
    return later(lower, upper).error("size", said + "Swap the words or correct the ranges.");
  }

  private static Row later(ChartLine one, ChartLine other) {
    return one.row().line() > other.row().line() ? one.row() : other.row();
  }

  private static List<ChartLine> sorted(List<ChartLine> lines) {
    return lines.stream().sorted(Comparator.comparing(line -> line.range().from())).toList();
  }
}
