package org.tapeline.inventory.helmet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.helmet.Lifecycle.Step;
import org.tapeline.inventory.place.Places.Place;

/**
 * Everything that a helmet's page shows.
 *
 * @param steps what can be done with it now
 * @param rule the policy for its model, in words
 * @param lastDay the last day of its last age
 * @param printedOn the day at its place
 * @param places where it can be brought
 */
public record HelmetSheet(
    View helmet,
    Set<Step> steps,
    List<TimeLine.Line> life,
    String rule,
    Optional<LocalDate> lastDay,
    LocalDate printedOn,
    List<Place> places) {

  /** By the name of the step in the table of moves. */
  public boolean may(String step) {
    return steps.contains(Step.valueOf(step));
  }

  /** Nobody may wear it, whoever has it. */
  public boolean isOutOfCertification() {
    return helmet.certifiedUntil().filter(last -> last.isBefore(printedOn)).isPresent();
  }
}
