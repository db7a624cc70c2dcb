package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.roster.PlayerCommand.CorrectHead;
import org.tapeline.sizing.roster.PlayerCommand.WithdrawHead;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/** From what somebody typed to a corrected or withdrawn head, and advice anew. */
@ApplicationScoped
public class Correcting {
  private final CommandLog commands;
  private final Players players;
  private final Advising advising;
  private final EnteredHead entered;
  private final LastHeads last;
  private final Clock clock;

  Correcting(
      CommandLog commands,
      Players players,
      Advising advising,
      EnteredHead entered,
      LastHeads last,
      Clock clock) {
    this.commands = commands;
    this.players = players;
    this.advising = advising;
    this.entered = entered;
    this.last = last;
    this.clock = clock;
  }

  /**
   * What was asked.
   *
   * @param version of the head
   * @param readings as typed; none when it was another player's head
   * @param why misread, wrong-player, wrong-unit or other
   * @param hair usual, short, long or braids; as it was when it is not said
   * @param confirmed whether an unusual value was confirmed
   */
  public record Entry(
      long version, List<String> readings, String why, String hair, boolean confirmed) {}

  /**
   * What is answered.
   *
   * @param valueMm the player's newest head now; empty when none is left
   */
  public record Corrected(
      UUID player,
      long version,
      boolean withdrawn,
      Optional<Double> valueMm,
      Optional<String> inches,
      List<PlayerEvent.ModelAdvice> advice) {}

  /**
   * @param by staff id of who corrects
   * @throws Problem when the head is not the person's to correct, the reason or a reading is not
   *     understood, a third one is needed, or the value must be confirmed
   */
  public Answer correct(UUID commandId, UUID player, Entry entry, String by) {
    return commands.once(
        commandId,
        "correct-head/" + player,
        entry,
        () -> Answer.of(200, doCorrect(commandId, player, entry, by)));
  }

  private Corrected doCorrect(UUID commandId, UUID player, Entry entry, String by) {
    boolean withdraw = reason(entry.why()) == CorrectionReason.WRONG_PLAYER;
    Cause cause = Cause.command(commandId);
    HeadRow head = HeadRow.findById(new HeadRow.Key(player, entry.version()));
    players.handle(
        withdraw ? withdraw(player, head, entry, by) : correct(player, head, entry, by), cause);
    advising.adviseAnew(player, cause);
    Optional<HeadRow> newest = Optional.ofNullable(HeadRow.newestOf(List.of(player)).get(player));
    return new Corrected(
        player,
        entry.version(),
        withdraw,
        newest.map(now -> now.valueMm),
        newest.map(now -> Inches.say(new Millimetres(now.valueMm))),
        AdviceRow.of(player).stream().map(AdviceRow::asAdvice).toList());
  }

  private PlayerCommand withdraw(UUID player, HeadRow head, Entry entry, String by) {
    List<String> readings = entry.readings() == null ? List.of() : entry.readings();
    List<FieldError> typed =
        IntStream.range(0, readings.size())
            .filter(i -> readings.get(i) != null && !readings.get(i).isBlank())
            .mapToObj(i -> new FieldError("readings[" + i + "]", "Leave this empty."))
            .toList();
    if (!typed.isEmpty()) {
      throw new Problem(
          422,
          "readings",
          "Not corrected",
          "The head of another player is withdrawn, without new readings. Measure the right player"
              + " on that player's page.",
          typed);
    }
    return new WithdrawHead(player, entry.version(), offered(head), by, clock.instant());
  }

  private PlayerCommand correct(UUID player, HeadRow head, Entry entry, String by) {
    Measurement measurement =
        entered.measurement(entry.readings(), head == null ? by : head.measuredBy);
    boolean asItWas = head != null && (entry.hair() == null || entry.hair().isBlank());
    return new CorrectHead(
        player,
        entry.version(),
        offered(head),
        measurement,
        entered.forAge(
            player, measurement.value(), head == null ? clock.instant() : head.measuredAt),
        EnteredHead.hair(asItWas ? head.hair : entry.hair()),
        entry.confirmed(),
        reason(entry.why()),
        by,
        clock.instant());
  }

  private boolean offered(HeadRow head) {
    return head != null && last.offers(head);
  }

  private static CorrectionReason reason(String code) {
    return CorrectionReason.of(code)
        .orElseThrow(
            () ->
                new Problem(
                    422,
                    "why",
                    "Not corrected",
                    "Say why the head was not right.",
                    List.of(
                        new FieldError(
                            "why", "Choose misread, wrong-player, wrong-unit or other."))));
  }
}
