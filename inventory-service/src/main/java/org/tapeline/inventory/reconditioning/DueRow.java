package org.tapeline.inventory.reconditioning;

import java.util.List;
import java.util.stream.Collectors;
import org.tapeline.inventory.reconditioning.BatchPlan.Step;
import org.tapeline.inventory.reconditioning.BatchPlan.Way;
import org.tapeline.inventory.reconditioning.Standing.Reason;

/**
 * A due helmet in a list.
 *
 * @param due why it is due, in words
 * @param ticked put on the next batch unless somebody takes it off
 */
public record DueRow(Step step, String due, boolean ticked) {

  static final List<String> HEADER =
      List.of(
          "tag", "model", "size", "place", "state", "wearable_through", "due", "proposal", "why");

  static DueRow of(Step step, boolean ticked) {
    String due =
        step.standing().reasons().stream().map(DueRow::said).collect(Collectors.joining("; "));
    return new DueRow(step, due, ticked);
  }

  private static String said(Reason reason) {
    return switch (reason.why()) {
      case CERTIFICATION -> "certified until " + reason.on();
      case INTERVAL -> "interval over on " + reason.on();
      case LAST_AGE -> "last age after " + reason.on();
      case FINDINGS -> "in quarantine";
    };
  }

  public FleetHelmet helmet() {
    return step.standing().helmet();
  }

  public boolean isToRetire() {
    return step.way() == Way.RETIRE;
  }

  private String way() {
    return switch (step.way()) {
      case GOES -> "goes now";
      case WAITS -> "waits";
      case RETIRE -> "retire";
    };
  }

  List<String> cells() {
    FleetHelmet h = helmet();
    return List.of(
        h.tag(),
        h.model(),
        h.size(),
        h.place(),
        h.state(),
        step.standing().wearableThrough().toString(),
        due,
        way(),
        step.why());
  }
}
