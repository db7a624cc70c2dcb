package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/** The time that a household is at a fit day anyhow, for one of its players. */
public record Stay(UUID fitDay, Instant from, Instant to, Set<UUID> guardians) {
  public Stay {
    guardians = Set.copyOf(guardians);
  }

  static Stay of(SlotSeeker seeker, OpenSlot slot) {
    return new Stay(slot.fitDay(), slot.startsAt(), slot.endsAt(), seeker.guardians());
  }
}
