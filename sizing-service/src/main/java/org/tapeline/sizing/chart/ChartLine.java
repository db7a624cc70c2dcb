package org.tapeline.sizing.chart;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer.RowError;
import org.tapeline.sizing.units.Millimetres;

/** A row of a chart file that could be read. */
record ChartLine(Row row, SizeRange range, String unit) {
  private static final Map<String, Double> UNITS =
      Map.of("mm", 1.0, "cm", 10.0, "in", Millimetres.PER_INCH);
  private static final double LEAST_MM = 300;
  private static final double MOST_MM = 750;

  /** Adds what is wrong to the errors; empty when something was. */
  static Optional<ChartLine> of(Row row, List<RowError> errors) {
    Optional<RowError> wrong = wrong(row);
    if (wrong.isPresent()) {
      errors.add(wrong.get());
      return Optional.empty();
    }
    Millimetres from = length(row, "from").orElseThrow();
    Millimetres to = length(row, "to").orElseThrow();
    return Optional.of(
        new ChartLine(row, new SizeRange(row.get("size"), from, to), row.get("unit")));
  }

  private static Optional<RowError> wrong(Row row) {
    if (!row.get("model").matches("[a-z0-9-]{1,30}")) {
      return Optional.of(row.error("model", "Needed: small letters, digits and hyphens."));
    }
    if (!row.get("size").matches("[a-z0-9-]{1,30}")) {
      return Optional.of(row.error("size", "Needed, such as youth-medium."));
    }
    if (!UNITS.containsKey(row.get("unit"))) {
      return Optional.of(row.error("unit", "One of mm, cm and in."));
    }
    for (String end : List.of("from", "to")) {
      if (length(row, end).isEmpty()) {
        return Optional.of(row.error(end, "Needed: a number with a decimal point."));
      }
    }
    return wrongRange(
        row, length(row, "from").orElseThrow().value(), length(row, "to").orElseThrow().value());
  }

  private static Optional<RowError> wrongRange(Row row, double from, double to) {
    if (from >= to) {
      return Optional.of(row.error("to", "Must be above the start of the range."));
    }
    return from < LEAST_MM || to > MOST_MM
        ? Optional.of(row.error("unit", "No head measures that. Is the unit right?"))
        : Optional.empty();
  }

  private static Optional<Millimetres> length(Row row, String column) {
    String text = row.get(column);
    if (!text.matches("[0-9]{1,4}(\\.[0-9]{1,6})?")) {
      return Optional.empty();
    }
    double factor = UNITS.get(row.get("unit"));
    return Optional.of(new Millimetres(new BigDecimal(text).doubleValue() * factor));
  }
}
