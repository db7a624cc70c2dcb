package org.tapeline.sizing.chart;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/** The charts in force; a chart's stream holds all its versions. */
@ApplicationScoped
public class Charts {
  private final Journal journal;

  Charts(Journal journal) {
    this.journal = journal;
  }

  public List<SizeChart> inForce() {
    return ChartRow.<ChartRow>list("order by model").stream()
        .map(row -> newest(row.model).orElseThrow())
        .toList();
  }

  /** The chart of a model that is in force. */
  public Optional<SizeChart> newest(String model) {
    List<RecordedEvent> versions = journal.load(stream(model));
    return versions.isEmpty()
        ? Optional.empty()
        : Optional.of(((ChartPublished) versions.getLast().data()).chart());
  }

  /** In which unit the charts in force were written; without those of which it is not known. */
  public Map<String, ChartUnit> units() {
    Map<String, ChartUnit> units = new HashMap<>();
    for (ChartRow row : ChartRow.<ChartRow>listAll()) {
      ChartUnit.of(row.unit).ifPresent(unit -> units.put(row.model, unit));
    }
    return units;
  }

  /** Publishes the sizes as a new version, unless they are those in force. True when it did. */
  public boolean publish(String model, ChartUnit unit, List<SizeRange> sizes, Cause cause) {
    Optional<SizeChart> before = newest(model);
    int version = before.map(SizeChart::version).orElse(0) + 1;
    SizeChart chart = new SizeChart(model, version, sizes);
    if (before.isPresent() && before.get().sameSizesAs(chart)) {
      return false;
    }
    journal.append(
        stream(model), version - 1L, List.of(ChartPublished.of(chart)), cause.step(model));
    ChartRow row = ChartRow.of(model);
    row.unit = unit.code();
    row.version(version);
    return true;
  }

  private static StreamName stream(String model) {
    return StreamName.of("chart", model, model);
  }
}
