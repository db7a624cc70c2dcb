package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.reading.Reading;
import org.tapeline.sizing.roster.PlayerCommand.RecordHead;
import org.tapeline.sizing.units.Inches;

/** From what a measurer typed to a recorded head with size advice. */
@ApplicationScoped
public class Measuring {
  private final CommandLog commands;
  private final Players players;
  private final Advising advising;
  private final EnteredHead entered;
  private final Clock clock;

  Measuring(
      CommandLog commands, Players players, Advising advising, EnteredHead entered, Clock clock) {
    this.commands = commands;
    this.players = players;
    this.advising = advising;
    this.entered = entered;
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
    Measurement measurement = entered.measurement(entry.readings(), by);
    Hair hair = EnteredHead.hair(entry.hair());
    Cause cause = Cause.command(commandId);
    Instant now = clock.instant();
    players.handle(
        new RecordHead(
            player,
            measurement,
            entered.forAge(player, measurement.value(), now),
            hair,
            entry.confirmed(),
            by,
            now),
        cause);
    advising.advise(player, measurement, hair, cause);
    return new Measured(
        player,
        measurement.value().value(),
        Inches.say(measurement.value()),
        measurement.uncertainty().value(),
        measurement.method().code(),
        measurement.readings().stream().map(Reading::saidBack).toList(),
        AdviceRow.of(player).stream().map(AdviceRow::asAdvice).toList());
  }
}
