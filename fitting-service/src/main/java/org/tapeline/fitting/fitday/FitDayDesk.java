package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
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

/** Announces, moves and cancels fit days, from pages and programs alike. */
@ApplicationScoped
public class FitDayDesk {
  private final CommandLog commands;
  private final FitDays fitDays;
  private final WaitingCases waiting;
  private final FitTimes times;
  private final Caller caller;
  private final Clock clock;

  FitDayDesk(
      CommandLog commands,
      FitDays fitDays,
      WaitingCases waiting,
      FitTimes times,
      Caller caller,
      Clock clock) {
    this.commands = commands;
    this.fitDays = fitDays;
    this.waiting = waiting;
    this.times = times;
    this.caller = caller;
    this.clock = clock;
  }

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
          Place place = ownPlace(body);
          int usual = body.minutesPerFit() == null ? times.at(place.code).minutes() : 0;
          Opening opening = body.opening(place, 1, usual);
          Cause cause = Cause.command(id);
          if (handle(fitDay, new FitDayCommand.Announce(fitDay, opening, clock.instant()), cause)) {
            waiting.bookWaiting(cause);
          }
          return Answer.of(201, Map.of("fitDay", fitDay));
        });
  }

  /** What of a fit day is to be otherwise; with the day, since one id moves one day. */
  private record Wanted(UUID fitDay, FitDayBody body) {}

  /**
   * @throws Problem when an entry is wrong or one of both fields is not the caller's
   */
  public Answer move(UUID id, UUID fitDay, FitDayBody body) {
    return commands.once(
        id,
        "move-fit-day",
        new Wanted(fitDay, body),
        () -> {
          FitDayRow row = ownDay(fitDay);
          Opening opening = body.opening(ownPlace(body), row.fitters, row.minutes);
          change(row, new FitDayCommand.Move(fitDay, opening, clock.instant()), "moved", id);
          return new Answer(204, null);
        });
  }

  public Answer cancel(UUID id, UUID fitDay) {
    return commands.once(
        id,
        "cancel-fit-day",
        fitDay,
        () -> {
          FitDayRow row = ownDay(fitDay);
          change(row, new FitDayCommand.Cancel(fitDay, clock.instant()), "cancelled", id);
          return new Answer(204, null);
        });
  }

  /** The cases are held before their slots go, in the order in which whoever ends one does. */
  private void change(FitDayRow day, FitDayCommand command, String why, UUID id) {
    fitDays.lockSlots();
    List<TakenPlace> taken = fitDays.takenOn(day);
    waiting.holdStill(taken.stream().map(TakenPlace::refitCase).toList());
    Cause cause = Cause.command(id);
    if (handle(day.fitDay, command, cause)) {
      waiting.bookAgain(day.fitDay, taken, why, cause);
    }
  }

  /** True when it led to something. */
  private boolean handle(UUID fitDay, FitDayCommand command, Cause cause) {
    return switch (fitDays.handle(fitDay, command, cause)) {
      case FitDayDecision.Accepted accepted -> true;
      case FitDayDecision.Unchanged unchanged -> false;
      case FitDayDecision.Refused r ->
          throw r.field().isEmpty()
              ? Problem.conflict(r.code(), r.sentence())
              : FitDayBody.wrong(List.of(new FieldError(r.field(), r.sentence())));
    };
  }

  private FitDayRow ownDay(UUID fitDay) {
    FitDayRow row = FitDayRow.findById(fitDay);
    if (row == null) {
      throw Problem.notFound("There is no such fit day.");
    }
    mustWorkAt(row.field);
    return row;
  }

  private Place ownPlace(FitDayBody body) {
    Place place = body.place();
    mustWorkAt(place.code);
    return place;
  }

  private void mustWorkAt(String field) {
    if (!caller.mayWorkAt(field)) {
      throw Problem.otherField("You do not work at the field " + field + ".");
    }
  }
}
