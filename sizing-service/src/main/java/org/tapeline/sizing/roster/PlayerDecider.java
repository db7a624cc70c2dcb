package org.tapeline.sizing.roster;

import java.util.List;
import java.util.Optional;
import org.tapeline.sizing.growth.HeadForAge;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.roster.PlayerCommand.Advise;
import org.tapeline.sizing.roster.PlayerCommand.PutOnRoster;
import org.tapeline.sizing.roster.PlayerCommand.RecordHead;
import org.tapeline.sizing.roster.PlayerCommand.TakeOffRoster;
import org.tapeline.sizing.roster.PlayerEvent.HeadMeasured;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;
import org.tapeline.sizing.roster.PlayerEvent.PlayerEnrolled;
import org.tapeline.sizing.roster.PlayerEvent.PlayerLeft;
import org.tapeline.sizing.roster.PlayerEvent.PlayerMoved;
import org.tapeline.sizing.roster.PlayerEvent.ReadingTaken;
import org.tapeline.sizing.roster.PlayerEvent.SizeAdvised;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

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
      return new Decision.Refused("not-on-roster", "This player is not on the roster.");
    }
    Optional<Decision> doubt = doubt(state, head);
    if (doubt.isPresent() && !head.confirmed()) {
      return doubt.get();
    }
    return accepted(measured(head, doubt.isPresent()));
  }

  /** Why the value should be looked at again; empty when it is a usual one. */
  private static Optional<Decision> doubt(PlayerState state, RecordHead head) {
    Optional<String> shrunk = fall(state, head.measurement().value()).map(f -> shrunk(state, f));
    Optional<String> unusual = head.forAge().filter(HeadForAge::unusual).map(HeadForAge::said);
    if (shrunk.isEmpty() && unusual.isEmpty()) {
      return Optional.empty();
    }
    String why = (unusual.orElse("") + " " + shrunk.orElse("")).strip();
    return Optional.of(
        new Decision.Refused(
            shrunk.isPresent() ? "smaller-than-before" : "unusual-for-age",
            why + " Measure again, or confirm that it is right."));
  }

  private static String shrunk(PlayerState state, Millimetres fall) {
    return "The last reading was "
        + Inches.say(new Millimetres(state.head().orElseThrow().valueMm()))
        + ", this one is "
        + Math.round(fall.value())
        + " mm smaller. Heads do not shrink.";
  }

  /** By how much the head would have shrunk; empty within what two readings may differ. */
  private static Optional<Millimetres> fall(PlayerState state, Millimetres now) {
    return state
        .head()
        .map(last -> last.valueMm() - now.value())
        .filter(fall -> fall > Measurement.TOLERANCE.value())
        .map(Millimetres::new);
  }

  private static HeadMeasured measured(RecordHead head, boolean confirmed) {
    Measurement m = head.measurement();
    List<ReadingTaken> readings =
        m.readings().stream().map(r -> new ReadingTaken(r.entered(), r.length().value())).toList();
    return new HeadMeasured(
        head.player(),
        readings,
        m.value().value(),
        m.uncertainty().value(),
        m.method().code(),
        Optional.of(head.hair().code()),
        confirmed,
        head.by(),
        confirmed ? Optional.of(head.by()) : Optional.empty(),
        head.at());
  }

  private static Decision advise(PlayerState state, Advise advise) {
    List<ModelAdvice> advice = advise.advice().stream().map(ModelAdvice::of).toList();
    boolean nothingNew = advice.isEmpty() || advice.equals(state.advice());
    if (!state.enrolled() || state.head().isEmpty() || nothingNew) {
      return nothing();
    }
    return accepted(new SizeAdvised(advise.player(), state.head().get().valueMm(), advice));
  }

  public static PlayerState evolve(PlayerState state, PlayerEvent event) {
    return switch (event) {
      case PlayerEnrolled e ->
          new PlayerState(true, e.team(), e.field(), state.head(), state.advice());
      case PlayerMoved e ->
          new PlayerState(true, e.team(), e.field(), state.head(), state.advice());
      case PlayerLeft e ->
          new PlayerState(false, state.team(), state.field(), state.head(), state.advice());
      case HeadMeasured e ->
          new PlayerState(
              state.enrolled(), state.team(), state.field(), Optional.of(e), state.advice());
      case SizeAdvised e ->
          new PlayerState(state.enrolled(), state.team(), state.field(), state.head(), e.advice());
    };
  }

  private static Decision accepted(PlayerEvent event) {
    return new Decision.Accepted(List.of(event));
  }

  private static Decision nothing() {
    return new Decision.Accepted(List.of());
  }
}
