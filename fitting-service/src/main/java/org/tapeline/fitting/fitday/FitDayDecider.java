package org.tapeline.fitting.fitday;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.tapeline.fitting.fitday.FitDay.Status;
import org.tapeline.fitting.fitday.FitDayCommand.Announce;
import org.tapeline.fitting.fitday.FitDayCommand.Cancel;
import org.tapeline.fitting.fitday.FitDayCommand.Move;
import org.tapeline.fitting.fitday.FitDayDecision.Accepted;
import org.tapeline.fitting.fitday.FitDayDecision.Refused;
import org.tapeline.fitting.fitday.FitDayDecision.Unchanged;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayCancelled;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayMoved;

/**
 * The rules of a fit day: it lies ahead, has room for a fit, and can be moved or called off till
 * its end.
 */
public final class FitDayDecider {
  private static final Duration LONGEST = Duration.ofHours(14);

  private FitDayDecider() {}

  public static FitDayDecision decide(FitDay state, FitDayCommand command) {
    return switch (command) {
      case Announce c -> announce(state, c);
      case Move c -> move(state, c);
      case Cancel c ->
          overtaken(state, c.at())
              .map(r -> (FitDayDecision) r)
              .orElseGet(() -> new Accepted(new FitDayCancelled(c.fitDay(), c.at())));
    };
  }

  private static FitDayDecision announce(FitDay state, Announce c) {
    if (state.status() != Status.NOT_ANNOUNCED) {
      return new Refused("announced-before", "", "This fit day was announced before.");
    }
    return wrong(c.opening(), c.at())
        .map(r -> (FitDayDecision) r)
        .orElseGet(() -> new Accepted(FitDayAnnounced.of(c.fitDay(), c.opening(), c.at())));
  }

  private static FitDayDecision move(FitDay state, Move c) {
    Optional<Refused> overtaken = overtaken(state, c.at());
    if (overtaken.isPresent()) {
      return overtaken.get();
    }
    if (state.opening().equals(Optional.of(c.opening()))) {
      return new Unchanged();
    }
    return wrong(c.opening(), c.at())
        .map(r -> (FitDayDecision) r)
        .orElseGet(() -> new Accepted(FitDayMoved.of(c.fitDay(), c.opening(), c.at())));
  }

  private static Optional<Refused> overtaken(FitDay state, Instant now) {
    return switch (state.status()) {
      case NOT_ANNOUNCED ->
          Optional.of(new Refused("not-announced", "", "There is no such fit day."));
      case CANCELLED ->
          Optional.of(new Refused("cancelled-before", "", "This fit day was cancelled before."));
      case ANNOUNCED ->
          state.opening().filter(o -> o.endsAt().isAfter(now)).isPresent()
              ? Optional.empty()
              : Optional.of(new Refused("over", "", "This fit day is over."));
    };
  }

  private static Optional<Refused> wrong(Opening o, Instant now) {
    if (o.fitters() < 1 || o.fitters() > 50) {
      return refuse("fitters", "fitters", "Between 1 and 50 fitters.");
    }
    if (o.minutesPerFit() < 5 || o.minutesPerFit() > 120) {
      return refuse("minutes", "minutesPerFit", "Between 5 and 120 minutes for a fit.");
    }
    if (!o.startsAt().isAfter(now)) {
      return refuse("past", "date", "The fit day must lie ahead. Choose a later day or hour.");
    }
    Duration open = Duration.between(o.startsAt(), o.endsAt());
    if (open.compareTo(Duration.ofMinutes(o.minutesPerFit())) < 0) {
      return refuse("closes", "closes", "Must leave time for at least one fit.");
    }
    return open.compareTo(LONGEST) > 0
        ? refuse("closes", "closes", "At most 14 hours. Announce two days instead.")
        : Optional.empty();
  }

  private static Optional<Refused> refuse(String code, String field, String sentence) {
    return Optional.of(new Refused(code, field, sentence));
  }

  public static FitDay evolve(FitDay state, FitDayEvent event) {
    return switch (event) {
      case FitDayAnnounced e -> new FitDay(Status.ANNOUNCED, Optional.of(e.opening()));
      case FitDayMoved e -> new FitDay(Status.ANNOUNCED, Optional.of(e.opening()));
      case FitDayCancelled e -> new FitDay(Status.CANCELLED, state.opening());
    };
  }
}
