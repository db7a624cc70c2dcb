package org.tapeline.sizing.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tapeline.sizing.csv.CsvFile;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/**
 * Size charts from CSV. A chart is taken whole or not at all: half a chart would be a wrong one. A
 * row whose model cannot be read might belong to any of them, so then none of the file is taken.
 */
public final class ChartImport {
  private static final Set<String> COLUMNS = Set.of("model", "size", "from", "to", "unit");

  private ChartImport() {}

  /** What becomes of a chart that is in order. */
  public interface Keeping {
    /** False when nothing is changed by it. */
    boolean keep(ImportedChart chart);
  }

  /** Reads the file and keeps what is in order and wanted. */
  public static ImportAnswer run(String csv, ImportAnswer.Mode mode, Keeping keeping) {
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
    return keep(models, errors, keeping);
  }

  private static ImportAnswer keep(
      Map<String, ChartLines> models, List<RowError> errors, Keeping keeping) {
    int accepted = 0;
    int unchanged = 0;
    int rejected = 0;
    for (Map.Entry<String, ChartLines> model : models.entrySet()) {
      ChartLines lines = model.getValue();
      if (!lines.isWhole()) {
        rejected += lines.size();
      } else if (keeping.keep(lines.chart(model.getKey()))) {
        accepted += lines.size();
      } else {
        unchanged += lines.size();
      }
    }
    return new ImportAnswer(accepted, unchanged, rejected, errors);
  }
}
