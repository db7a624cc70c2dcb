package org.tapeline.sizing.chart;

import java.util.ArrayList;
import java.util.List;
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
    return rows.size() == lines.size() && faults().isEmpty();
  }

  /** What is wrong between the rows. */
  List<RowError> faults() {
    return ChartRules.faults(lines);
  }

  /** Of a whole chart only. */
  ImportedChart chart(String model) {
    return new ImportedChart(
        model,
        lines.getFirst().unit(),
        lines.stream().map(ChartLine::range).toList(),
        ChartRules.warnings(lines));
  }
}
