package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.growth.Age;
import org.tapeline.sizing.growth.GrowthReference;
import org.tapeline.sizing.growth.HeadForAge;
import org.tapeline.sizing.growth.Sex;
import org.tapeline.sizing.measurer.Measurers;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.reading.Reading;
import org.tapeline.sizing.reading.ReadingText;
import org.tapeline.sizing.reading.ReadingText.Understood;
import org.tapeline.sizing.roster.PlayerCommand.RecordHead;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/** From what a measurer typed to a recorded head with size advice. */
@ApplicationScoped
public class Measuring {
  private static final int LEAST = 2;
  private static final int MOST = 3;

  private final CommandLog commands;
  private final Players players;
  private final Advising advising;
  private final GrowthReference growth;
  private final Measurers measurers;
  private final Clock clock;

  Measuring(
      CommandLog commands,
      Players players,
      Advising advising,
      GrowthReference growth,
      Measurers measurers,
      Clock clock) {
    this.commands = commands;
    this.players = players;
    this.advising = advising;
    this.growth = growth;
    this.measurers = measurers;
    this.clock = clock;
  }

  /**
   * What was asked.
   *
   * @param readings as typed
   * @param confirmed whether an unusual value was confirmed
   * @param hair usual, short, long or braids; usual when it is not said
   */
  public record Entry(List<String> readings, boolean confirmed, String hair) {}

  /** What is answered. */
  public record Measured(
      UUID player,
      double valueMm,
      String inches,
      double uncertaintyMm,
      String method,
      List<String> saidBack,
      List<PlayerEvent.ModelAdvice> advice) {}

  /**
   * @throws Problem when a reading is not understood, a third one is needed, or the value must be
   *     confirmed
   */
  public Answer record(UUID commandId, UUID player, Entry entry, String by) {
    return commands.once(
        commandId,
        "record-head/" + player,
        entry,
        () -> Answer.of(200, doRecord(commandId, player, entry, by)));
  }

  private Measured doRecord(UUID commandId, UUID player, Entry entry, String by) {
    List<Reading> readings = understand(entry.readings());
    Measurement measurement = measurement(readings, measurers.repeatError(by).mm());
    Hair hair = hair(entry.hair());
    Cause cause = Cause.command(commandId);
    players.handle(
        new RecordHead(
            player,
            measurement,
            forAge(player, measurement.value()),
            hair,
            entry.confirmed(),
            by,
            clock.instant()),
        cause);
    advising.advise(player, measurement, hair, cause);
    return new Measured(
        player,
        measurement.value().value(),
        Inches.say(measurement.value()),
        measurement.uncertainty().value(),
        measurement.method().code(),
        readings.stream().map(Reading::saidBack).toList(),
        AdviceRow.of(player).stream().map(AdviceRow::asAdvice).toList());
  }

  private static Hair hair(String code) {
    return Hair.of(code)
        .orElseThrow(
            () ->
                Problem.badRequest(
                    "hair",
                    "The hair is not known by that word.",
                    new FieldError("hair", "Write usual, short, long or braids.")));
  }

  private Optional<HeadForAge> forAge(UUID player, Millimetres head) {
    PlayerRow row = PlayerRow.findById(player);
    if (row == null) {
      return Optional.empty();
    }
    double age = Age.years(row.birthDate, LocalDate.now(clock));
    return Optional.of(growth.place(Sex.of(row.sex), age, head));
  }

  /** Errors carry the place of the reading as it was sent, so that a page marks the right field. */
  private static List<Reading> understand(List<String> texts) {
    List<String> given = texts == null ? List.of() : texts;
    List<Reading> readings = new ArrayList<>();
    List<FieldError> errors = new ArrayList<>();
    for (int i = 0; i < Math.max(given.size(), LEAST); i++) {
      String text = i < given.size() && given.get(i) != null ? given.get(i) : "";
      if (text.isBlank() && i >= LEAST) {
        continue;
      }
      switch (ReadingText.understand(text)) {
        case Understood.Ok ok -> readings.add(ok.reading());
        case Understood.Not not -> errors.add(new FieldError("readings[" + i + "]", not.reason()));
      }
    }
    if (readings.size() > MOST) {
      errors.add(new FieldError("readings[" + MOST + "]", "Two readings are enough, or three."));
    }
    if (!errors.isEmpty()) {
      throw new Problem(
          422, "readings", "Not recorded", "Correct the readings that are marked.", errors);
    }
    return readings;
  }

  private static Measurement measurement(List<Reading> readings, double errorMm) {
    return switch (Measurement.of(readings, errorMm)) {
      case Measurement.Result.Ok ok -> ok.measurement();
      case Measurement.Result.ThirdNeeded third ->
          throw new Problem(
              422,
              "third-reading-needed",
              "A third reading is needed",
              "The two readings lie "
                  + Math.round(third.apart().value())
                  + " mm apart, more than 5 mm. Take a third one.",
              List.of(new FieldError("readings[2]", "Take a third reading.")));
    };
  }
}
