package org.tapeline.sizing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer.RowError;
import org.tapeline.sizing.units.Millimetres;

/** A row of a chart file that could be read. */
record ChartLine(Row row, SizeRange range, ChartUnit unit, SizeWord word) {
  private static final double LEAST_MM = 380;
  private static final double MOST_MM = 680;
  private static final double WIDEST_MM = 80;

  private static final String HEADS =
      "Heads measure 380 to 680 mm (38 to 68 cm, 15 to 26 3/4 in). ";

  /** Adds what is wrong to the errors; empty when something was. */
  static Optional<ChartLine> of(Row row, List<RowError> errors) {
    List<RowError> wrong = new ArrayList<>();
    if (!row.get("model").matches("[a-z0-9][a-z0-9-]{0,29}")) {
      wrong.add(row.error("model", "Needed: small letters, digits and hyphens, as in model-a."));
    }
    Optional<SizeWord> word = word(row, wrong);
    Optional<ChartUnit> unit = ChartUnit.of(row.get("unit"));
    if (unit.isEmpty()) {
      wrong.add(row.error("unit", "Write one of mm, cm and in."));
    }
    // Without the unit it still shows whether something is a number.
    ChartUnit read = unit.orElse(ChartUnit.MILLIMETRE);
    Optional<Millimetres> from = length(row, "from", read, wrong);
    Optional<Millimetres> to = length(row, "to", read, wrong);
    if (unit.isPresent() && from.isPresent() && to.isPresent()) {
      wrongRange(row, from.get(), to.get(), read).ifPresent(wrong::add);
    }
    errors.addAll(wrong);
    return wrong.isEmpty()
        ? Optional.of(
            new ChartLine(
                row,
                new SizeRange(row.get("size"), from.orElseThrow(), to.orElseThrow()),
                read,
                word.orElseThrow()))
        : Optional.empty();
  }

  private static Optional<SizeWord> word(Row row, List<RowError> wrong) {
    Optional<SizeWord> word = SizeWord.of(row.get("size"));
    if (word.isEmpty()) {
      String missing = row.get("size").isEmpty() ? "Needed, such as youth-medium. " : "";
      wrong.add(row.error("size", missing + "Write " + SizeWord.ALLOWED + "."));
    }
    return word;
  }

  private static Optional<Millimetres> length(
      Row row, String column, ChartUnit unit, List<RowError> wrong) {
    Optional<Millimetres> length = unit.read(row.get(column));
    if (length.isEmpty()) {
      wrong.add(row.error(column, "Needed: a number with a decimal point, such as 520.5."));
    }
    return length;
  }

  private static Optional<RowError> wrongRange(
      Row row, Millimetres from, Millimetres to, ChartUnit unit) {
    if (!isHead(from) && !isHead(to)) {
      return Optional.of(row.error("unit", HEADS + "Is the unit right? Else correct both ends."));
    }
    if (!isHead(from) || !isHead(to)) {
      String end = isHead(from) ? "to" : "from";
      return Optional.of(row.error(end, HEADS + "Correct this end of the range."));
    }
    if (from.compareTo(to) >= 0) {
      String start = row.get("from") + " " + unit.code();
      return Optional.of(
          row.error("to", "Must be above the start of the range, " + start + ": swap or correct."));
    }
    return to.value() - from.value() > WIDEST_MM + SizeRange.NOTHING_MM
        ? Optional.of(row.error("to", "No size is wider than 80 mm. Correct one of its ends."))
        : Optional.empty();
  }

  private static boolean isHead(Millimetres length) {
    return length.value() >= LEAST_MM - SizeRange.NOTHING_MM
        && length.value() <= MOST_MM + SizeRange.NOTHING_MM;
  }

  /** As it stands in the file: {@code Youth medium (520.5 to 556 mm)}. */
  String said() {
    return range.said() + " (" + row.get("from") + " to " + row.get("to") + " " + unit.code() + ")";
  }
}
