package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.UUID;

/** What happens to a fit day. */
public sealed interface FitDayEvent {
  UUID fitDay();

  /** Fitters will be at a field. */
  record FitDayAnnounced(
      UUID fitDay,
      String field,
      Instant startsAt,
      Instant endsAt,
      String zone,
      int fitters,
      int minutesPerFit,
      Instant at)
      implements FitDayEvent {}

  /** It does not take place. */
  record FitDayCancelled(UUID fitDay, Instant at) implements FitDayEvent {}
}
