package org.tapeline.sizing.offset;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tapeline.journal.Cause;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;

/** Learns from passed fits how a model's chart has to be read. */
@ApplicationScoped
public class Offsets {
  private final Event<OffsetApplied> applied;

  Offsets(Event<OffsetApplied> applied) {
    this.applied = applied;
  }

  /** Advice for this model has to be given anew; said within the transaction. */
  public record OffsetApplied(String model, Cause cause) {}

  /** The offsets that advice uses, whole mm, of the models that have one other than 0. */
  public Map<String, OffsetPosterior> inForce() {
    return OffsetRow.<OffsetRow>list("appliedMm <> 0").stream()
        .collect(Collectors.toMap(row -> row.model, OffsetRow::posterior));
  }

  /** All that was learned, by model. */
  public Map<String, OffsetPosterior> learned() {
    return OffsetRow.<OffsetRow>listAll().stream()
        .collect(Collectors.toMap(row -> row.model, OffsetRow::posterior));
  }

  /**
   * A head whose fit check passed in a size.
   *
   * @param spreadMm standard deviation of the head's measurement
   */
  public void learn(SizeChart chart, String size, double headMm, double spreadMm, Cause cause) {
    List<String> sizes = chart.sizes().stream().map(SizeRange::size).toList();
    int passed = sizes.indexOf(size);
    if (passed < 0) {
      return;
    }
    double from = passed == 0 ? Double.NEGATIVE_INFINITY : chart.sizes().get(passed).from().value();
    double to =
        passed + 1 == sizes.size()
            ? Double.POSITIVE_INFINITY
            : chart.sizes().get(passed + 1).from().value();
    OffsetRow row = OffsetRow.locked(chart.model());
    int before = row.appliedMm;
    row.show(row.posterior().after(headMm, spreadMm, from, to));
    if (row.appliedMm != before) {
      applied.fire(new OffsetApplied(chart.model(), cause));
    }
  }
}
