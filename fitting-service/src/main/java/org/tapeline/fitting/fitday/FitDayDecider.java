package org.tapeline.fitting.fitday;

import java.time.Duration;
import org.tapeline.fitting.fitday.FitDay.Status;
import org.tapeline.fitting.fitday.FitDayCommand.Announce;
import org.tapeline.fitting.fitday.FitDayCommand.Cancel;
import org.tapeline.fitting.fitday.FitDayDecision.Accepted;
import org.tapeline.fitting.fitday.FitDayDecision.Refused;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayCancelled;

/** The rules of a fit day: it lies ahead, has room for a fit and can be called off till its end. */
public final class FitDayDecider {
  private static final Duration LONGEST = Duration.ofHours(14);

  private FitDayDecider() {}

  public static FitDayDecision decide(FitDay state, FitDayCommand command) {
    return switch (command) {
      case Announce c -> announce(state, c);
      case Cancel c -> cancel(state, c);
    };
  }

  private static FitDayDecision announce(FitDay state, Announce c) {
    if (state.status() != Status.NOT_ANNOUNCED) {
      return new Refused("announced-before", "", "This fit day was announced before.");
    }
    if (c.fitters() < 1 || c.fitters() > 50) {
      return new Refused("fitters", "fitters", "Between 1 and 50 fitters.");
    }
    if (c.minutesPerFit() < 5 || c.minutesPerFit() > 120) {
      return new Refused("minutes", "minutesPerFit", "Between 5 and 120 minutes for a fit.");
    }
    if (!c.startsAt().isAfter(c.at())) {
      return new Refused("past", "date", "The fit day must lie ahead. Choose a later day or hour.");
    }
    Duration open = Duration.between(c.startsAt(), c.endsAt());
    if (open.compareTo(Duration.ofMinutes(c.minutesPerFit())) < 0) {
      return new Refused("closes", "closes", "Must leave time for at least one fit.");
    }
    if (open.compareTo(LONGEST) > 0) {
      return new Refused("closes", "closes", "At most 14 hours. Announce two days instead.");
    }
    return new Accepted(
        new FitDayAnnounced(
            c.fitDay(),
            c.field(),
            c.startsAt(),
            c.endsAt(),
            c.zone(),
            c.fitters(),
            c.minutesPerFit(),
            c.at()));
  }

  private static FitDayDecision cancel(FitDay state, Cancel c) {
    return switch (state.status()) {
      case NOT_ANNOUNCED -> new Refused("not-announced", "", "There is no such fit day.");
      case CANCELLED -> new Refused("cancelled-before", "", "This fit day was cancelled before.");
      case ANNOUNCED ->
          state.endsAt().isAfter(c.at())
              ? new Accepted(new FitDayCancelled(c.fitDay(), c.at()))
              : new Refused("over", "", "This fit day is over.");
    };
  }

  public static FitDay evolve(FitDay state, FitDayEvent event) {
    return switch (event) {
      case FitDayAnnounced e -> new FitDay(Status.ANNOUNCED, e.endsAt());
      case FitDayCancelled e -> new FitDay(Status.CANCELLED, state.endsAt());
    };
  }
}
