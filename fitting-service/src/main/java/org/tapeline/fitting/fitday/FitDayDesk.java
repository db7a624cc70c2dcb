package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.fitting.place.Place;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Announces and cancels fit days, from pages and programs alike. */
@ApplicationScoped
public class FitDayDesk {
  private static final int USUAL_MINUTES = 15;

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
          UUID fitDay = DerivedId.from(id, "fit-day");
          handle(announcement(fitDay, body), fitDay, Cause.command(id));
          return Answer.of(201, Map.of("fitDay", fitDay));
        });
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
          handle(new FitDayCommand.Cancel(fitDay, clock.instant()), fitDay, Cause.command(id));
          return new Answer(204, null);
        });
  }

  private void handle(FitDayCommand command, UUID fitDay, Cause cause) {
    switch (fitDays.handle(fitDay, command, cause)) {
      case FitDayDecision.Accepted accepted -> waiting.bookWaiting(cause);
      case FitDayDecision.Refused r ->
          throw r.field().isEmpty()
              ? Problem.conflict(r.code(), r.sentence())
              : wrong(List.of(new FieldError(r.field(), r.sentence())));
    }
  }

  private FitDayCommand announcement(UUID id, FitDayBody body) {
    Place place = body.field() == null ? null : Place.findById(body.field());
    if (place == null || !place.kind.equals("field")) {
      throw wrong(List.of(new FieldError("field", "Choose a field from the list.")));
    }
    mustWorkAt(place.code);
    ZoneId zone = ZoneId.of(place.zone);
    List<FieldError> errors = new ArrayList<>();
    Instant opens = moment("opens", body.date(), body.opens(), zone, errors);
    Instant closes = moment("closes", body.date(), body.closes(), zone, errors);
    if (!errors.isEmpty()) {
      throw wrong(errors);
    }
    return new FitDayCommand.Announce(
        id,
        place.code,
        opens,
        closes,
        place.zone,
        body.fitters() == null ? 1 : body.fitters(),
        body.minutesPerFit() == null ? USUAL_MINUTES : body.minutesPerFit(),
        clock.instant());
  }

  private static Instant moment(
      String field, String date, String time, ZoneId zone, List<FieldError> errors) {
    try {
      LocalDate day = LocalDate.parse(text(date));
      try {
        return ZonedDateTime.of(day, LocalTime.parse(text(time)), zone).toInstant();
      } catch (DateTimeException e) {
        errors.add(new FieldError(field, "Write the time as 17:30."));
      }
    } catch (DateTimeException e) {
      errors.removeIf(error -> error.field().equals("date"));
      errors.add(new FieldError("date", "Write the date as 2026-08-31."));
    }
    return Instant.EPOCH;
  }

  private void mustWorkAt(String field) {
    if (!caller.mayWorkAt(field)) {
      throw Problem.otherField("You do not work at the field " + field + ".");
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
