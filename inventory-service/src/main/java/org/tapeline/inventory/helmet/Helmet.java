package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.inventory.helmet.Lifecycle.Step;

/**
 * A helmet as its events tell.
 *
 * @param holder the player who has it; empty unless it is issued
 * @param holds the holds that it is under; they outlast quarantine and reconditioning
 * @param backInUse when it last came back into use from quarantine, a hold or the reconditioner;
 *     empty when it never did
 */
public record Helmet(
    String tag,
    State state,
    String model,
    String size,
    Optional<LocalDate> certifiedUntil,
    String place,
    Optional<UUID> holder,
    Set<UUID> holds,
    Optional<Instant> backInUse) {

  /** Where a helmet stands in its life. */
  public enum State {
    UNKNOWN,
    ORDERED,
    AVAILABLE,
    ISSUED,
    QUARANTINED,
    HELD,
    AT_RECONDITIONER,
    RETIRED;

    /** As a word: {@code available}, {@code at-reconditioner} ... */
    public String says() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Its state as a word. */
  public String says() {
    return state.says();
  }

  public static Helmet unknown(String tag) {
    return new Helmet(
        tag,
        State.UNKNOWN,
        "",
        "",
        Optional.empty(),
        "",
        Optional.empty(),
        Set.of(),
        Optional.empty());
  }

  /** By the table of moves. */
  public boolean allows(Step step) {
    return Lifecycle.allows(state, step);
  }

  /** Back on the shelf; one that is under a hold still is held there. */
  State backInStock() {
    return holds.isEmpty() ? State.AVAILABLE : State.HELD;
  }

  public static Helmet evolve(Helmet state, HelmetEvent event) {
    return switch (event) {
      case HelmetEvent.HelmetOrdered e ->
          new Helmet(
              e.tag(),
              State.ORDERED,
              e.model(),
              e.size(),
              Optional.empty(),
              e.place(),
              Optional.empty(),
              Set.of(),
              Optional.empty());
      case HelmetEvent.HelmetReceived e ->
          new Helmet(
              e.tag(),
              State.AVAILABLE,
              e.model(),
              e.size(),
              e.certifiedUntil(),
              e.place(),
              Optional.empty(),
              Set.of(),
              Optional.empty());
      case HelmetEvent.HelmetIssued e ->
          state.with(State.ISSUED, e.place(), Optional.of(e.player()));
      case HelmetEvent.HelmetReturned e -> state.with(State.AVAILABLE, e.place(), Optional.empty());
      case HelmetEvent.HelmetMoved e -> state.with(state.state, e.to(), state.holder);
      case HelmetEvent.HelmetQuarantined e ->
          state.with(State.QUARANTINED, e.place(), Optional.empty());
      case HelmetEvent.HelmetInspected e ->
          e.outcome().equals("back-to-stock")
              ? state.with(state.backInStock(), state.place, Optional.empty()).backAt(e.at())
              : state;
      case HelmetEvent.HelmetHeld e -> state.under(e.hold());
      case HelmetEvent.HelmetFreed e -> state.free(e.hold(), e.at());
      case HelmetEvent.HelmetSentOut e ->
          state.with(State.AT_RECONDITIONER, state.place, Optional.empty());
      case HelmetEvent.HelmetCameBack e ->
          state.with(state.backInStock(), e.place(), Optional.empty()).backAt(e.at());
      case HelmetEvent.HelmetRecertified e -> state.certified(e.certifiedUntil());
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

  private Helmet backAt(Instant at) {
    return state == State.AVAILABLE
        ? new Helmet(tag, state, model, size, certifiedUntil, place, holder, holds, Optional.of(at))
        : this;
  }

  private Helmet with(State next, String at, Optional<UUID> player) {
    return new Helmet(tag, next, model, size, certifiedUntil, at, player, holds, backInUse);
  }

  private Helmet under(UUID hold) {
    Set<UUID> more = new HashSet<>(holds);
    more.add(hold);
    State next = state == State.AVAILABLE || state == State.ISSUED ? State.HELD : state;
    return new Helmet(
        tag,
        next,
        model,
        size,
        certifiedUntil,
        place,
        Optional.empty(),
        Set.copyOf(more),
        backInUse);
  }

  private Helmet free(UUID hold, Instant at) {
    Set<UUID> left = new HashSet<>(holds);
    left.remove(hold);
    boolean back = state == State.HELD && left.isEmpty();
    State next = back ? State.AVAILABLE : state;
    return new Helmet(
        tag,
        next,
        model,
        size,
        certifiedUntil,
        place,
        holder,
        Set.copyOf(left),
        back ? Optional.of(at) : backInUse);
  }

  private Helmet certified(LocalDate until) {
    return new Helmet(tag, state, model, size, Optional.of(until), place, holder, holds, backInUse);
  }
}
