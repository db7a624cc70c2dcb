package org.tapeline.fitting.recheck;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.recheck.RecheckCauseEvent.ConditionsRecorded;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Takes the conditions of a field: typed by a person, or posted by a weather station's adapter. */
@ApplicationScoped
public class ConditionsDesk {
  private static final Duration CLOCKS_DIFFER = Duration.ofMinutes(5);

  private final CommandLog commands;
  private final Journal journal;
  private final CauseNoted noted;
  private final RecheckPlans plans;
  private final Caller caller;
  private final Clock clock;

  ConditionsDesk(
      CommandLog commands,
      Journal journal,
      CauseNoted noted,
      RecheckPlans plans,
      Caller caller,
      Clock clock) {
    this.commands = commands;
    this.journal = journal;
    this.noted = noted;
    this.plans = plans;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * What is told.
   *
   * @param air a number with or without a unit, such as {@code 39 F}
   * @param unit {@code C} or {@code F}, for a number without one; C where there is none
   * @param at ISO 8601 instant at which it was so warm; empty for now
   */
  public record Told(String field, String air, String unit, String at) {}

  /** What was kept. */
  public record Kept(String field, double airCelsius, Instant at) {}

  /**
   * @throws Problem when an entry is wrong or the field is not the caller's
   */
  public Answer record(UUID id, Told told) {
    return commands.once(
        id,
        "record-conditions",
        told,
        () -> {
          ConditionsRecorded event = event(told);
          // A stream a day: an adapter that posts all season does not make one that grows for ever.
          String day = LocalDate.ofInstant(event.at(), ZoneOffset.UTC).toString();
          StreamName stream = StreamName.of("conditions", event.field() + "-" + day, event.field());
          journal.append(stream, journal.load(stream).size(), List.of(event), Cause.command(id));
          FieldConditionsRow.show(event);
          noted.noted(
              PlayerCopy.atField(event.field()).stream().map(p -> p.player).toList(),
              Cause.command(id).step("conditions"));
          return Answer.of(201, new Kept(event.field(), event.airCelsius(), event.at()));
        });
  }

  private ConditionsRecorded event(Told told) {
    List<FieldError> errors = new ArrayList<>();
    Place place = told.field() == null ? null : Place.findById(told.field().strip());
    if (place == null || !place.kind.equals("field")) {
      errors.add(new FieldError("field", "Choose a field from the list."));
    } else if (!caller.mayWorkAt(place.code)) {
      throw Problem.otherField("You do not work at the field " + place.code + ".");
    }
    String unit = told.unit() == null || told.unit().isBlank() ? "C" : told.unit().strip();
    Optional<Double> celsius = TypedTemperature.celsius(told.air(), unit);
    if (celsius.isEmpty()) {
      errors.add(
          new FieldError("air", "Write the air temperature as 4 °C or 39 °F, from -40 to 60 °C."));
    }
    Optional<Instant> at = moment(told.at(), errors);
    if (!errors.isEmpty()) {
      throw new Problem(
          422, "conditions", "Not recorded", "Correct the entries that are marked.", errors);
    }
    return new ConditionsRecorded(place.code, celsius.get(), at.get(), caller.id());
  }

  /** Neither to come nor so old that it would not count. */
  private Optional<Instant> moment(String typed, List<FieldError> errors) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    if (typed == null || typed.isBlank()) {
      return Optional.of(now);
    }
    try {
      Instant at = Instant.parse(typed.strip());
      boolean counts =
          !at.isAfter(now.plus(CLOCKS_DIFFER))
              && !at.isBefore(now.minus(plans.inForce().conditionsHold()));
      if (counts) {
        return Optional.of(at.isAfter(now) ? now : at);
      }
      errors.add(
          new FieldError(
              "at",
              "Send a time within the last " + plans.inForce().conditionsHoldHours() + " hours."));
    } catch (DateTimeException e) {
      errors.add(new FieldError("at", "Write the time as 2026-11-02T17:30:00Z."));
    }
    return Optional.empty();
  }
}
