package org.tapeline.fitting.recheck;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.recheck.RecheckCauseEvent.HairChanged;
import org.tapeline.fitting.roster.Hair;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Notes that a player's hair is other than at the fit. */
@ApplicationScoped
public class HairDesk {
  private final CommandLog commands;
  private final Journal journal;
  private final CauseNoted noted;
  private final Caller caller;
  private final Clock clock;

  HairDesk(CommandLog commands, Journal journal, CauseNoted noted, Caller caller, Clock clock) {
    this.commands = commands;
    this.journal = journal;
    this.noted = noted;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * What is noted.
   *
   * @param player id or roster number
   * @param hair as it is now: usual, short, long or braids
   */
  public record Changed(String player, String hair) {}

  /**
   * @throws Problem when there is no such player, it is at another field, or the hair is no such
   */
  public Answer note(UUID id, Changed body) {
    return commands.once(
        id,
        "note-hair",
        body,
        () -> {
          PlayerCopy player = own(body.player());
          if (!Hair.isKind(body.hair())) {
            throw new Problem(
                422,
                "hair",
                "Not recorded",
                Hair.ONE_OF,
                List.of(new FieldError("hair", Hair.ONE_OF)));
          }
          PlayerCopy.locked(player.player);
          HairChanged event =
              new HairChanged(player.player, body.hair(), clock.instant(), caller.id());
          StreamName stream = StreamName.of("hair", player.player, player.player);
          journal.append(stream, journal.load(stream).size(), List.of(event), Cause.command(id));
          HairChangeRow.show(event);
          noted.noted(List.of(player.player), Cause.command(id).step("hair"));
          return Answer.of(201, event);
        });
  }

  private PlayerCopy own(String reference) {
    PlayerCopy player = PlayerCopy.known(reference);
    if (!caller.mayWorkAt(player.field)) {
      throw Problem.otherField("You do not work at this player's field.");
    }
    return player;
  }
}
