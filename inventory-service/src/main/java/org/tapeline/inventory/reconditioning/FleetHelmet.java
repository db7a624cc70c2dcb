package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A helmet that is not retired, as reconditioning sees it.
 *
 * @param state available, reserved (for a re-fit, or by a plan), issued, quarantined, held or
 *     at-reconditioner
 * @param certifiedUntil by its label; empty when nobody has read it
 * @param reconditionedOn when it last came back certified; empty when it never went
 */
public record FleetHelmet(
    String tag,
    String model,
    String size,
    String place,
    String state,
    LocalDate manufacturedOn,
    Optional<LocalDate> certifiedUntil,
    Optional<LocalDate> reconditionedOn) {

  /** Its kind: helmets of one model and size stand in for each other. */
  public Kind kind() {
    return new Kind(model, size);
  }

  /** A model and size. */
  public record Kind(String model, String size) {}

  /** On a head, on a shelf, or kept for somebody. */
  boolean inUse() {
    return state.equals("available") || state.equals("reserved") || state.equals("issued");
  }
}
