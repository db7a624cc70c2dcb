package org.tapeline.inventory.allocation;

import java.time.Instant;
import java.util.UUID;

/** What happens to a plan; which helmet is for whom is told when it is reserved or issued. */
public sealed interface PlanEvent {
  UUID plan();

  /**
   * Its helmets are kept for its players.
   *
   * @param why {@code hold}, {@code cases}, {@code season} or {@code even-out}
   * @param gone helmets that were free when it was made and are not any more
   */
  record PlanCommitted(
      UUID plan,
      String why,
      int players,
      int kept,
      int left,
      int gone,
      Instant keptUntil,
      String by,
      Instant at)
      implements PlanEvent {}

  /** Helmets that were kept still are free again. */
  record PlanReleased(UUID plan, String why, int helmets, Instant at) implements PlanEvent {}
}
