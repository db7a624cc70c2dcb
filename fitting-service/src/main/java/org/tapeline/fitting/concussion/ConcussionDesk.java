package org.tapeline.fitting.concussion;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.concussion.ConcussionCommand.Clear;
import org.tapeline.fitting.concussion.ConcussionCommand.Suspect;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.signoff.SignOff;
import org.tapeline.fitting.signoff.SignOffs;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Takes what people say of a suspected concussion, from pages and programs alike. */
@ApplicationScoped
public class ConcussionDesk {
  private final CommandLog commands;
  private final Concussions concussions;
  private final SignOffs signOffs;
  private final Caller caller;
  private final Clock clock;

  ConcussionDesk(
      CommandLog commands, Concussions concussions, SignOffs signOffs, Caller caller, Clock clock) {
    this.commands = commands;
    this.concussions = concussions;
    this.signOffs = signOffs;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * A concussion is suspected.
   *
   * @param player id or roster number
   * @param tag the helmet that was worn; empty for the one the player is signed off in or has
   */
  public record Suspected(String player, Optional<String> tag) {}

  /** The return was cleared. */
  public record Cleared(Boolean confirmed) {}

  /** How the player stands now. */
  public record Stands(UUID player, boolean outOfPlay) {}

  public Answer suspect(UUID id, Suspected body) {
    return commands.once(
        id,
        "suspect-concussion",
        body,
        () -> {
          PlayerCopy player = seen(body.player());
          PlayerCopy.locked(player.player);
          Optional<String> tag = worn(player.player, body.tag());
          return answer(
              new Suspect(player.player, tag, caller.id(), clock.instant()), player.player, id);
        });
  }

  /** Not for the coach alone: whoever wants the player back on the field does not confirm it. */
  public Answer clear(UUID id, String reference, Cleared body) {
    return commands.once(
        id,
        "clear-return",
        Map.of("player", reference, "body", body),
        () -> {
          PlayerCopy player = seen(reference);
          if (!mayClear(player)) {
            throw Problem.forbidden(
                "A fitter of the player's field or the equipment manager confirms the return.");
          }
          PlayerCopy.locked(player.player);
          boolean confirmed = Boolean.TRUE.equals(body.confirmed());
          return answer(
              new Clear(player.player, confirmed, caller.id(), clock.instant()), player.player, id);
        });
  }

  private Answer answer(ConcussionCommand command, UUID player, UUID id) {
    return switch (concussions.handle(player, command, Cause.command(id))) {
      case ConcussionDecision.Accepted a ->
          Answer.of(
              200, new Stands(player, a.event() instanceof ConcussionEvent.ConcussionSuspected));
      case ConcussionDecision.Refused r ->
          throw r.field().isEmpty()
              ? Problem.conflict(r.code(), r.sentence())
              : wrong(r.code(), r.field(), r.sentence());
    };
  }

  boolean mayClear(PlayerCopy player) {
    return caller.mayWorkAt(player.field);
  }

  boolean outOfPlay(PlayerCopy player) {
    return !concussions.among(List.of(player.player)).isEmpty();
  }

  /**
   * @throws Problem when there is no such player, or it is none of the caller's
   */
  PlayerCopy seen(String reference) {
    PlayerCopy player = PlayerCopy.known(reference);
    if (!caller.mayWorkAt(player.field) && !caller.mayFollow(player.team)) {
      throw Problem.otherField("This player is neither of your field nor of your team.");
    }
    return player;
  }

  /** The one named, else the one signed off, else the one that the player has by the records. */
  Optional<String> worn(UUID player, Optional<String> named) {
    Optional<String> tag =
        Optional.ofNullable(named)
            .flatMap(n -> n)
            .map(t -> t.strip().toUpperCase(Locale.ROOT))
            .filter(t -> !t.isEmpty());
    if (tag.isPresent()) {
      if (HelmetCopy.findByIdOptional(tag.get()).isEmpty()) {
        throw wrong("tag", "tag", "No helmet has this tag. Check it, or leave it empty.");
      }
      return tag;
    }
    return signOffs
        .live(player)
        .map(SignOff.Live::tag)
        .or(() -> HelmetCopy.heldBy(player).map(helmet -> helmet.tag));
  }

  private static Problem wrong(String code, String field, String sentence) {
    return new Problem(
        422, code, "Not recorded", sentence, List.of(new FieldError(field, sentence)));
  }
}
