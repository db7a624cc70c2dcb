package org.tapeline.inventory.helmet;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * A helmet as its events tell.
 *
 * @param holder the player who has it; empty unless it is issued
 */
public record Helmet(
    String tag,
    State state,
    String model,
    String size,
    Optional<LocalDate> certifiedUntil,
    String place,
    Optional<UUID> holder) {

  /** Where a helmet stands in its life. */
  public enum State {
    UNKNOWN,
    AVAILABLE,
    ISSUED,
    QUARANTINED,
    RETIRED
  }

  /** What can be done with it. */
  public enum Step {
    RECEIVE,
    ISSUE,
    RETURN,
    MOVE,
    REPORT_DAMAGE,
    SET_ASIDE,
    INSPECT,
    RETIRE
  }

  private static final Map<State, Set<Step>> ALLOWED = new EnumMap<>(State.class);

  static {
    ALLOWED.put(State.UNKNOWN, EnumSet.of(Step.RECEIVE));
    ALLOWED.put(
        State.AVAILABLE,
        EnumSet.of(Step.ISSUE, Step.MOVE, Step.REPORT_DAMAGE, Step.SET_ASIDE, Step.RETIRE));
    ALLOWED.put(
        State.ISSUED,
        EnumSet.of(
            Step.ISSUE, Step.RETURN, Step.MOVE, Step.REPORT_DAMAGE, Step.SET_ASIDE, Step.RETIRE));
    ALLOWED.put(
        State.QUARANTINED, EnumSet.of(Step.MOVE, Step.REPORT_DAMAGE, Step.INSPECT, Step.RETIRE));
    ALLOWED.put(State.RETIRED, EnumSet.noneOf(Step.class));
  }

  /** Its state as a word: {@code available}, {@code issued} ... */
  public String says() {
    return state.name().toLowerCase(Locale.ROOT);
  }

  public static Helmet unknown(String tag) {
    return new Helmet(tag, State.UNKNOWN, "", "", Optional.empty(), "", Optional.empty());
  }

  /** The table of moves: what is not in it is refused. */
  public boolean allows(Step step) {
    return ALLOWED.get(state).contains(step);
  }

  public static Helmet evolve(Helmet state, HelmetEvent event) {
    return switch (event) {
      case HelmetEvent.HelmetReceived e ->
          new Helmet(
              e.tag(),
              State.AVAILABLE,
              e.model(),
              e.size(),
              e.certifiedUntil(),
              e.place(),
              Optional.empty());
      case HelmetEvent.HelmetIssued e ->
          state.with(State.ISSUED, e.place(), Optional.of(e.player()));
      case HelmetEvent.HelmetReturned e -> state.with(State.AVAILABLE, e.place(), Optional.empty());
      case HelmetEvent.HelmetMoved e -> state.with(state.state, e.to(), state.holder);
      case HelmetEvent.HelmetQuarantined e ->
          state.with(State.QUARANTINED, e.place(), Optional.empty());
      case HelmetEvent.HelmetInspected e ->
          e.outcome().equals("back-to-stock")
              ? state.with(State.AVAILABLE, state.place, Optional.empty())
              : state;
      case HelmetEvent.HelmetRetired e -> state.with(State.RETIRED, state.place, Optional.empty());
      case HelmetEvent.IssueRefused e -> state;
      case HelmetEvent.DamageReported e -> state;
    };
  }

  /** The helmet after all its events. */
  public static Helmet of(String tag, List<HelmetEvent> events) {
    Helmet state = unknown(tag);
    for (HelmetEvent event : events) {
      state = evolve(state, event);
    }
    return state;
  }

  private Helmet with(State next, String at, Optional<UUID> player) {
    return new Helmet(tag, next, model, size, certifiedUntil, at, player);
  }
}
