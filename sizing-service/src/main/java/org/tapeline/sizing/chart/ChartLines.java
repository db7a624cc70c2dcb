package org.tapeline.sizing.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/** The rows of one model in a chart file, with those that could be read. */
final class ChartLines {
  private final List<Row> rows = new ArrayList<>();
  private final List<ChartLine> lines = new ArrayList<>();

  void add(Row row, List<RowError> errors) {
    rows.add(row);
    ChartLine.of(row, errors).ifPresent(lines::add);
  }

  int size() {
    return rows.size();
  }

  boolean isWhole() {
    return rows.size() == lines.size();
  }

  List<SizeRange> ranges() {
    return lines.stream().map(ChartLine::range).toList();
  }

  /** What is wrong between the rows; the later row of a pair is the one that is named. */
  List<RowError> faults() {
    List<RowError> faults = new ArrayList<>();
    Set<String> sizes = new HashSet<>();
    for (ChartLine line : lines) {
      if (!sizes.add(line.range().size())) {
        faults.add(line.row().error("size", line.range().said() + " stands twice for the model."));
      }
    }
    lines.stream()
        .filter(line -> !line.unit().equals(lines.getFirst().unit()))
        .findFirst()
        .map(line -> line.row().error("unit", "A chart uses one unit in all rows."))
        .ifPresent(faults::add);
    overlap().ifPresent(faults::add);
    return faults;
  }

  private Optional<RowError> overlap() {
    List<ChartLine> sorted =
        lines.stream().sorted(Comparator.comparing(line -> line.range().from())).toList();
    for (int i = 1; i < sorted.size(); i++) {
      ChartLine lower = sorted.get(i - 1);
      ChartLine upper = sorted.get(i);
      if (lower.range().overlaps(upper.range())) {
        Row later = lower.row().line() > upper.row().line() ? lower.row() : upper.row();
        String said = lower.range().said() + " and " + upper.range().said() + " overlap.";
        return Optional.of(later.error("from", said + " Both ends belong to a size."));
      }
    }
    return Optional.empty();
  }
}
