package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.Set;
import java.util.UUID;

/**
 * A case that looks for a slot.
 *
 * @param withoutHelmet the player has no helmet that may be worn; also when that is not known
 * @param field where the player trains
 * @param earliest from when on everything that the case needs is there; never before now
 * @param guardians who bring the player; players who share one are siblings
 */
public record SlotSeeker(
    UUID refitCase,
    boolean withoutHelmet,
    Instant openedAt,
    String field,
    Instant earliest,
    Set<UUID> guardians) {

  /** Whoever has no helmet first, then the oldest case. */
  public static final Comparator<SlotSeeker> BY_URGENCY =
      Comparator.comparing((SlotSeeker s) -> !s.withoutHelmet())
          .thenComparing(SlotSeeker::openedAt)
          .thenComparing(SlotSeeker::refitCase);

  public SlotSeeker {
    guardians = Set.copyOf(guardians);
  }

  boolean siblingOf(Set<UUID> others) {
    return !Collections.disjoint(guardians, others);
  }
}
