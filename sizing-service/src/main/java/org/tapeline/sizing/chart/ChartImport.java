package org.tapeline.sizing.chart;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tapeline.journal.Cause;
import org.tapeline.sizing.csv.CsvFile;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.RowError;
import org.tapeline.sizing.units.Millimetres;

/**
 * Size charts from CSV. A chart is taken whole or not at all: half a chart would be a wrong one.
 */
@ApplicationScoped
public class ChartImport {
  private static final Set<String> COLUMNS = Set.of("model", "size", "from", "to", "unit");
  private static final Map<String, Double> UNITS =
      Map.of("mm", 1.0, "cm", 10.0, "in", Millimetres.PER_INCH);

  private final Charts charts;

  ChartImport(Charts charts) {
    this.charts = charts;
  }

  private record Line(Row row, SizeRange range, String unit) {}

  /** In the caller's transaction. */
  public ImportAnswer run(String csv, ImportAnswer.Mode mode, Cause cause) {
    Map<String, List<Line>> models = new LinkedHashMap<>();
    List<RowError> errors = new ArrayList<>();
    List<Row> rows = CsvFile.read(csv, COLUMNS).rows();
    for (Row row : rows) {
      models.computeIfAbsent(row.get("model"), m -> new ArrayList<>());
      read(row, errors, models.get(row.get("model")));
    }
    models.forEach((model, lines) -> check(lines, errors));
    if (!errors.isEmpty() && mode == ImportAnswer.Mode.ALL_OR_NONE) {
      return new ImportAnswer(0, 0, rows.size(), errors);
    }
    return publish(models, errors, cause);
  }

  private static void read(Row row, List<RowError> errors, List<Line> lines) {
    if (!row.get("model").matches("[a-z0-9-]{1,30}")) {
      errors.add(error(row, "model", "Needed: small letters, digits and hyphens."));
    } else if (!row.get("size").matches("[a-z0-9-]{1,30}")) {
      errors.add(error(row, "size", "Needed, such as youth-medium."));
    } else if (!UNITS.containsKey(row.get("unit"))) {
      errors.add(error(row, "unit", "One of mm, cm and in."));
    } else {
      readRange(row, errors, lines);
    }
  }

  private static void readRange(Row row, List<RowError> errors, List<Line> lines) {
    double factor = UNITS.get(row.get("unit"));
    double[] ends = new double[2];
    for (int i = 0; i < 2; i++) {
      String column = i == 0 ? "from" : "to";
      try {
        ends[i] = new BigDecimal(row.get(column)).doubleValue() * factor;
      } catch (NumberFormatException e) {
        errors.add(error(row, column, "Needed: a number with a decimal point."));
        return;
      }
    }
    if (ends[0] < 300 || ends[1] > 750) {
      errors.add(error(row, "unit", "No head measures that. Is the unit right?"));
    } else if (ends[0] >= ends[1]) {
      errors.add(error(row, "to", "Must be above the start of the range."));
    } else {
      SizeRange range =
          new SizeRange(row.get("size"), new Millimetres(ends[0]), new Millimetres(ends[1]));
      lines.add(new Line(row, range, row.get("unit")));
    }
  }

  private static void check(List<Line> lines, List<RowError> errors) {
    if (lines.stream().map(Line::unit).distinct().count() > 1) {
      errors.add(error(lines.getLast().row(), "unit", "A chart uses one unit in all rows."));
    }
    for (String fault : SizeChart.faults(lines.stream().map(Line::range).toList())) {
      errors.add(error(lines.getLast().row(), "from", fault + "."));
    }
  }

  private ImportAnswer publish(Map<String, List<Line>> models, List<RowError> errors, Cause cause) {
    Set<Long> bad = new HashSet<>();
    errors.forEach(e -> bad.add(e.row()));
    int accepted = 0;
    int unchanged = 0;
    int rejected = 0;
    for (Map.Entry<String, List<Line>> model : models.entrySet()) {
      List<Line> lines = model.getValue();
      boolean whole =
          !lines.isEmpty()
              && lines.stream().noneMatch(line -> bad.contains(line.row().line()))
              && errors.stream().noneMatch(e -> e.column().equals("model"));
      if (!whole) {
        rejected += Math.max(1, lines.size());
      } else if (charts.publish(model.getKey(), lines.stream().map(Line::range).toList(), cause)) {
        accepted += lines.size();
      } else {
        unchanged += lines.size();
      }
    }
    return new ImportAnswer(accepted, unchanged, rejected, errors);
  }

  private static RowError error(Row row, String column, String message) {
    return new RowError(row.line(), column, row.get(column), message);
  }
}
