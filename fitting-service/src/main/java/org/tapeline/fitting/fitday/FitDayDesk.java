package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.fitting.access.Caller;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.problem.Problem;
import org.tapeline.fitting.problem.Problem.FieldError;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;

/** Announces and cancels fit days, from pages and programs alike. */
@ApplicationScoped
public class FitDayDesk {
  private static final int USUAL_MINUTES = 15;
  private static final Duration LONGEST = Duration.ofHours(14);

  private final CommandLog commands;
  private final FitDays fitDays;
  private final WaitingCases waiting;
  private final Caller caller;
  private final Clock clock;

  FitDayDesk(
      CommandLog commands, FitDays fitDays, WaitingCases waiting, Caller caller, Clock clock) {
    this.commands = commands;
    this.fitDays = fitDays;
    this.waiting = waiting;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * What is announced.
   *
   * @param date ISO date, {@code opens} and {@code closes} ISO times, in the field's zone
   */
  public record FitDayBody(
      String field,
      String date,
      String opens,
      String closes,
      Integer fitters,
      Integer minutesPerFit) {}

  /**
   * @throws Problem when an entry is wrong or the field is not the caller's
   */
  public Answer announce(UUID id, FitDayBody body) {
    return commands.once(
        id,
        "announce-fit-day",
        body,
        () -> {
          FitDayAnnounced day = day(DerivedId.from(id, "fit-day"), body);
          Cause cause = Cause.command(id);
          fitDays.announce(day, cause);
          waiting.bookWaiting(cause);
          return Answer.of(201, Map.of("fitDay", day.fitDay()));
        });
  }

  private FitDayAnnounced day(UUID id, FitDayBody body) {
    List<FieldError> errors = new ArrayList<>();
    Place place = body.field() == null ? null : Place.findById(body.field());
    if (place == null || !place.kind.equals("field")) {
      errors.add(new FieldError("field", "Choose a field from the list."));
    } else {
      mustWorkAt(place.code);
    }
    int fitters = body.fitters() == null ? 1 : body.fitters();
    int minutes = body.minutesPerFit() == null ? USUAL_MINUTES : body.minutesPerFit();
    if (fitters < 1 || fitters > 50) {
      errors.add(new FieldError("fitters", "Between 1 and 50 fitters."));
    }
    if (minutes < 5 || minutes > 120) {
      errors.add(new FieldError("minutesPerFit", "Between 5 and 120 minutes."));
    }
    if (!errors.isEmpty()) {
      throw wrong(errors);
    }
    ZoneId zone = ZoneId.of(place.zone);
    Instant opens = moment("opens", body.date(), body.opens(), zone, errors);
    Instant closes = moment("closes", body.date(), body.closes(), zone, errors);
    if (errors.isEmpty() && opens.isBefore(clock.instant())) {
      errors.add(new FieldError("date", "The fit day must lie ahead."));
    }
    if (errors.isEmpty()
        && (opens.plus(Duration.ofMinutes(minutes)).isAfter(closes)
            || opens.plus(LONGEST).isBefore(closes))) {
      errors.add(
          new FieldError("closes", "Must leave time for at least one fit, at most 14 hours."));
    }
    if (!errors.isEmpty()) {
      throw wrong(errors);
    }
    return new FitDayAnnounced(
        id, place.code, opens, closes, place.zone, fitters, minutes, clock.instant());
  }

  private static Instant moment(
      String field, String date, String time, ZoneId zone, List<FieldError> errors) {
    try {
      return ZonedDateTime.of(LocalDate.parse(text(date)), LocalTime.parse(text(time)), zone)
          .toInstant();
    } catch (DateTimeException e) {
      errors.add(new FieldError(field, "Write the date as 2026-08-31 and times as 17:30."));
      return Instant.EPOCH;
    }
  }

  public Answer cancel(UUID id, UUID fitDay) {
    return commands.once(
        id,
        "cancel-fit-day",
        fitDay,
        () -> {
          FitDayRow row = FitDayRow.findById(fitDay);
          if (row == null) {
            throw Problem.notFound("There is no such fit day.");
          }
          mustWorkAt(row.field);
          if (row.cancelled) {
            throw Problem.conflict("cancelled-before", "This fit day was cancelled before.");
          }
          Cause cause = Cause.command(id);
          fitDays.cancel(row, cause);
          waiting.bookWaiting(cause);
          return new Answer(204, null);
        });
  }

  private void mustWorkAt(String field) {
    if (!caller.mayWorkAt(field)) {
      throw new Problem(
          403,
          "other-field",
          "Not your field",
          "You do not work at the field " + field + ".",
          List.of());
    }
  }

  private static Problem wrong(List<FieldError> errors) {
    return new Problem(
        422, "fit-day", "Not announced", "Correct the entries that are marked.", errors);
  }

  private static String text(String value) {
    return value == null ? "" : value.strip();
  }
}
