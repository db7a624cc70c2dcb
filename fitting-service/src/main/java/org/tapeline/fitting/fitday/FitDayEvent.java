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
      implements FitDayEvent {
    static FitDayAnnounced of(UUID fitDay, Opening o, Instant at) {
      return new FitDayAnnounced(
          fitDay,
          o.field(),
          o.startsAt(),
          o.endsAt(),
          o.zone(),
          o.fitters(),
          o.minutesPerFit(),
          at);
    }

    Opening opening() {
      return new Opening(field, startsAt, endsAt, zone, fitters, minutesPerFit);
    }
  }

  /** It is held otherwise than was said before; what it says replaces all of that. */
  record FitDayMoved(
      UUID fitDay,
      String field,
      Instant startsAt,
      Instant endsAt,
      String zone,
      int fitters,
      int minutesPerFit,
      Instant at)
      implements FitDayEvent {
    static FitDayMoved of(UUID fitDay, Opening o, Instant at) {
      return new FitDayMoved(
          fitDay,
          o.field(),
          o.startsAt(),
          o.endsAt(),
          o.zone(),
          o.fitters(),
          o.minutesPerFit(),
          at);
    }

    Opening opening() {
      return new Opening(field, startsAt, endsAt, zone, fitters, minutesPerFit);
    }
  }

  /** It does not take place. */
  record FitDayCancelled(UUID fitDay, Instant at) implements FitDayEvent {}
}
