package org.tapeline.sizing.chart;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tapeline.journal.Cause;
import org.tapeline.sizing.csv.CsvFile;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/**
 * Size charts from CSV. A chart is taken whole or not at all: half a chart would be a wrong one. A
 * row whose model cannot be read might belong to any of them, so then none of the file is taken.
 */
@ApplicationScoped
public class ChartImport {
  private static final Set<String> COLUMNS = Set.of("model", "size", "from", "to", "unit");

  private final Charts charts;

  ChartImport(Charts charts) {
    this.charts = charts;
  }

  /** In the caller's transaction. */
  public ImportAnswer run(String csv, ImportAnswer.Mode mode, Cause cause) {
    Map<String, ChartLines> models = new LinkedHashMap<>();
    List<RowError> errors = new ArrayList<>();
    List<Row> rows = CsvFile.read(csv, COLUMNS).rows();
    for (Row row : rows) {
      models.computeIfAbsent(row.get("model"), m -> new ChartLines()).add(row, errors);
    }
    models.values().forEach(lines -> errors.addAll(lines.faults()));
    boolean unreadableModel = errors.stream().anyMatch(e -> e.column().equals("model"));
    if (unreadableModel || !errors.isEmpty() && mode == ImportAnswer.Mode.ALL_OR_NONE) {
      return new ImportAnswer(0, 0, rows.size(), errors);
    }
    return publish(models, errors, cause);
  }

  private ImportAnswer publish(Map<String, ChartLines> models, List<RowError> errors, Cause cause) {
    int accepted = 0;
    int unchanged = 0;
    int rejected = 0;
    for (Map.Entry<String, ChartLines> model : models.entrySet()) {
      ChartLines lines = model.getValue();
      if (!lines.isWhole() || !lines.faults().isEmpty()) {
        rejected += lines.size();
      } else if (charts.publish(model.getKey(), lines.ranges(), cause)) {
        accepted += lines.size();
      } else {
        unchanged += lines.size();
      }
    }
    return new ImportAnswer(accepted, unchanged, rejected, errors);
  }
}
