package org.tapeline.sizing.roster;

import java.util.List;
import java.util.Optional;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.roster.PlayerCommand.Advise;
import org.tapeline.sizing.roster.PlayerCommand.CorrectHead;
import org.tapeline.sizing.roster.PlayerCommand.PutOnRoster;
import org.tapeline.sizing.roster.PlayerCommand.RecordHead;
import org.tapeline.sizing.roster.PlayerCommand.TakeOffRoster;
import org.tapeline.sizing.roster.PlayerCommand.WithdrawHead;
import org.tapeline.sizing.roster.PlayerEvent.HeadCorrected;
import org.tapeline.sizing.roster.PlayerEvent.HeadMeasured;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;
import org.tapeline.sizing.roster.PlayerEvent.PlayerEnrolled;
import org.tapeline.sizing.roster.PlayerEvent.PlayerLeft;
import org.tapeline.sizing.roster.PlayerEvent.PlayerMoved;
import org.tapeline.sizing.roster.PlayerEvent.ReadingTaken;
import org.tapeline.sizing.roster.PlayerEvent.SizeAdvised;
import org.tapeline.sizing.roster.PlayerState.KnownHead;

/** What may happen to a player on the roster. */
public final class PlayerDecider {
  private PlayerDecider() {}

  /** Events, none when nothing changes, or a refusal. */
  public sealed interface Decision {
    /** It happens. */
    record Accepted(List<PlayerEvent> events) implements Decision {}

    /** It does not; the sentence is for the person who asked. */
    record Refused(String code, String sentence) implements Decision {}
  }

  public static Decision decide(PlayerState state, PlayerCommand command) {
    return switch (command) {
      case PutOnRoster put -> putOnRoster(state, put);
      case TakeOffRoster take ->
          state.enrolled() ? accepted(new PlayerLeft(take.player())) : nothing();
      case RecordHead head -> recordHead(state, head);
      case CorrectHead correct -> correctHead(state, correct);
      case WithdrawHead withdraw -> withdrawHead(state, withdraw);
      case Advise advise -> advise(state, advise);
    };
  }

  private static Decision putOnRoster(PlayerState state, PutOnRoster put) {
    if (!state.enrolled()) {
      return accepted(new PlayerEnrolled(put.player(), put.number(), put.team(), put.field()));
    }
    boolean same = state.team().equals(put.team()) && state.field().equals(put.field());
    return same ? nothing() : accepted(new PlayerMoved(put.player(), put.team(), put.field()));
  }

  private static Decision recordHead(PlayerState state, RecordHead head) {
    if (!state.enrolled()) {
      return notOnRoster();
    }
    Optional<HeadDoubt> doubt =
        HeadDoubt.of(head.measurement().value(), state.head(), head.forAge());
    return doubt.isPresent() && !head.confirmed()
        ? refused(doubt.get())
        : accepted(measured(head, doubt.isPresent()));
  }

  private static HeadMeasured measured(RecordHead head, boolean confirmed) {
    Measurement m = head.measurement();
    return new HeadMeasured(
        head.player(),
        ReadingTaken.of(m),
        m.value().value(),
        m.uncertainty().value(),
        m.method().code(),
        Optional.of(head.hair().code()),
        confirmed,
        head.by(),
        confirmed ? Optional.of(head.by()) : Optional.empty(),
        head.at());
  }

  private static Decision correctHead(PlayerState state, CorrectHead correct) {
    Optional<HeadDoubt> doubt =
        HeadDoubt.of(
            correct.measurement().value(), state.headBefore(correct.corrects()), correct.forAge());
    return notCorrectable(state, correct.corrects(), correct.offered())
        .orElseGet(
            () ->
                doubt.isPresent() && !correct.confirmed()
                    ? refused(doubt.get())
                    : accepted(corrected(correct, doubt.isPresent())));
  }

  private static Decision withdrawHead(PlayerState state, WithdrawHead withdraw) {
    return notCorrectable(state, withdraw.corrects(), withdraw.offered())
        .orElseGet(
            () ->
                accepted(
                    HeadCorrected.withdrawn(
                        withdraw.player(), withdraw.corrects(), withdraw.by(), withdraw.at())));
  }

  private static Optional<Decision> notCorrectable(
      PlayerState state, long corrects, boolean offered) {
    if (!state.enrolled()) {
      return Optional.of(notOnRoster());
    }
    Optional<KnownHead> head = state.headOf(corrects);
    if (head.isEmpty()) {
      return refusal("no-such-head", "This player has no such measurement.");
    }
    if (head.get().withdrawn()) {
      return refusal("withdrawn", "It was withdrawn already. Measure the player again.");
    }
    return offered
        ? Optional.empty()
        : refusal(
            "not-yours-to-correct",
            "You can correct your own last 20 measurements; the equipment manager the last 20 of"
                + " all. Measure the player again.");
  }

  private static HeadCorrected corrected(CorrectHead correct, boolean confirmed) {
    Measurement m = correct.measurement();
    return new HeadCorrected(
        correct.player(),
        correct.corrects(),
        false,
        Optional.of(ReadingTaken.of(m)),
        Optional.of(m.value().value()),
        Optional.of(m.uncertainty().value()),
        Optional.of(m.method().code()),
        Optional.of(correct.hair().code()),
        confirmed,
        correct.why().code(),
        correct.by(),
        correct.at());
  }

  private static Decision advise(PlayerState state, Advise advise) {
    List<ModelAdvice> advice = advise.advice().stream().map(ModelAdvice::of).toList();
    if (!state.enrolled() || advice.equals(state.advice())) {
      return nothing();
    }
    if (state.head().isEmpty()) {
      return state
          .advised()
          .filter(before -> !before.advice().isEmpty())
          .map(b -> accepted(new SizeAdvised(advise.player(), b.valueMm(), List.of())))
          .orElse(nothing());
    }
    return advice.isEmpty()
        ? nothing()
        : accepted(new SizeAdvised(advise.player(), state.head().get().value(), advice));
  }

  public static PlayerState evolve(PlayerState state, PlayerEvent event) {
    return switch (event) {
      case PlayerEnrolled e -> state.at(true, e.team(), e.field());
      case PlayerMoved e -> state.at(true, e.team(), e.field());
      case PlayerLeft e -> state.at(false, state.team(), state.field());
      case HeadMeasured e -> state.measured(e.valueMm());
      case HeadCorrected e -> state.corrected(e.corrects(), e.valueMm());
      case SizeAdvised e -> state.advised(e);
    };
  }

  private static Decision notOnRoster() {
    return new Decision.Refused("not-on-roster", "This player is not on the roster.");
  }

  private static Decision refused(HeadDoubt doubt) {
    return new Decision.Refused(doubt.code(), doubt.sentence());
  }

  private static Optional<Decision> refusal(String code, String sentence) {
    return Optional.of(new Decision.Refused(code, sentence));
  }

  private static Decision accepted(PlayerEvent event) {
    return new Decision.Accepted(List.of(event));
  }

  private static Decision nothing() {
    return new Decision.Accepted(List.of());
  }
}
