package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.Decision.Accepted;
import org.tapeline.inventory.helmet.Decision.Refused;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.http.Problem;

/** Decides on helmets, keeps what happened and tells who must act; in the caller's transaction. */
@ApplicationScoped
public class HelmetDesk {
  private final Journal journal;
  private final Database database;
  private final HelmetWatches watches;
  private final HelmetHolds holds;
  private final HelmetDates dates;
  private final HelmetTable table;

  HelmetDesk(
      Journal journal,
      Database database,
      HelmetWatches watches,
      HelmetHolds holds,
      HelmetDates dates,
      HelmetTable table) {
    this.journal = journal;
    this.database = database;
    this.watches = watches;
    this.holds = holds;
    this.dates = dates;
    this.table = table;
  }

  /** A helmet with how many events it has had. */
  public record Loaded(Helmet helmet, long version) {}

  public Loaded load(String tag) {
    List<HelmetEvent> events =
        journal.load(stream(tag)).stream().map(e -> (HelmetEvent) e.data()).toList();
    return new Loaded(Helmet.of(tag, events), events.size());
  }

  /** Its life so far. */
  public List<RecordedEvent> life(String tag) {
    return journal.load(stream(tag));
  }

  /**
   * Does it. A hold that is due on the helmet comes first, so that nothing is decided without it.
   *
   * @throws Problem when it is refused
   */
  public List<HelmetEvent> run(String tag, HelmetCommand command, Cause cause) {
    Loaded loaded = locked(tag);
    List<HelmetEvent> first = dueHolds(loaded.helmet(), command.at());
    Helmet now = evolve(loaded.helmet(), first);
    return switch (HelmetDecider.decide(now, dates.dated(now, command))) {
      case Refused refused -> throw Problem.conflict(refused.code(), refused.sentence());
      case Accepted accepted -> {
        List<HelmetEvent> events = accepted.events();
        keep(loaded, and(first, and(events, holdsOnReceipt(now, events))), cause);
        yield events;
      }
    };
  }

  /** Gives it to the player, whose former helmet comes back; or notes why it cannot be. */
  public void issue(String tag, HelmetCommand.Issue command, Cause cause) {
    Loaded loaded = locked(tag);
    List<HelmetEvent> first = dueHolds(loaded.helmet(), command.at());
    Helmet now = evolve(loaded.helmet(), first);
    if (HelmetDecider.decide(now, command) instanceof Accepted accepted) {
      if (accepted.events().get(0) instanceof HelmetEvent.HelmetIssued) {
        takeBackOthers(command.player(), tag, command, cause);
      }
      keep(loaded, and(first, accepted.events()), cause.step("issue"));
    }
  }

  /** Who places a hold on the helmet meanwhile waits, or was first and is seen here. */
  private Loaded locked(String tag) {
    database.list("select 1 from helmet where tag = ? for no key update", row -> 1, tag);
    return load(tag);
  }

  private List<HelmetEvent> dueHolds(Helmet helmet, Instant at) {
    return helmet.state() == Helmet.State.UNKNOWN
        ? List.of()
        : hold(helmet, holds.due(helmet.tag()), at);
  }

  /** One that comes under an open hold is never available, not even for a moment. */
  private List<HelmetEvent> holdsOnReceipt(Helmet before, List<HelmetEvent> events) {
    return events.stream()
        .filter(HelmetEvent.HelmetReceived.class::isInstance)
        .map(HelmetEvent.HelmetReceived.class::cast)
        .flatMap(e -> hold(Helmet.evolve(before, e), holds.covering(e), e.at()).stream())
        .toList();
  }

  private static List<HelmetEvent> hold(Helmet helmet, Set<UUID> holds, Instant at) {
    List<HelmetEvent> events = new ArrayList<>();
    for (UUID hold : holds) {
      HelmetCommand command = new HelmetCommand.Hold(hold, at);
      if (HelmetDecider.decide(evolve(helmet, events), command) instanceof Accepted accepted) {
        events.addAll(accepted.events());
      }
    }
    return events;
  }

  static Helmet evolve(Helmet helmet, List<? extends HelmetEvent> events) {
    Helmet state = helmet;
    for (HelmetEvent event : events) {
      state = Helmet.evolve(state, event);
    }
    return state;
  }

  private static List<HelmetEvent> and(List<HelmetEvent> first, List<HelmetEvent> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }

  private void takeBackOthers(UUID player, String tag, HelmetCommand.Issue command, Cause cause) {
    List<String> others =
        database.list(
            "select tag from helmet where holder = ? and tag <> ?",
            row -> row.getString(1),
            player,
            tag);
    others.forEach(other -> takeBack(other, command, cause.step("take-back")));
  }

  /** One on which a hold is due does not come back to the shelf: it is held where it is. */
  private void takeBack(String tag, HelmetCommand.Issue command, Cause cause) {
    Loaded loaded = locked(tag);
    List<HelmetEvent> due = dueHolds(loaded.helmet(), command.at());
    if (due.isEmpty()) {
      run(tag, new HelmetCommand.Return(command.place(), command.at()), cause);
    } else {
      keep(loaded, due, cause);
    }
  }

  private void keep(Loaded loaded, List<HelmetEvent> events, Cause cause) {
    String tag = loaded.helmet().tag();
    journal.append(
        stream(tag), loaded.version(), events.stream().map(e -> (Record) e).toList(), cause);
    Helmet state = loaded.helmet();
    for (HelmetEvent event : events) {
      state = Helmet.evolve(state, event);
      table.show(event, state);
    }
    holds.held(
        events.stream()
            .filter(HelmetEvent.HelmetHeld.class::isInstance)
            .map(HelmetEvent.HelmetHeld.class::cast)
            .toList());
    for (HelmetEvent event : events) {
      tell(event, state, cause);
    }
  }

  private void tell(HelmetEvent event, Helmet state, Cause cause) {
    switch (event) {
      case HelmetEvent.HelmetQuarantined e -> watches.taken(e.tag(), "helmet-quarantined", cause);
      case HelmetEvent.HelmetRetired e -> watches.taken(e.tag(), "helmet-retired", cause);
      case HelmetEvent.HelmetHeld e -> watches.taken(e.tag(), "helmet-held", cause);
      case HelmetEvent.HelmetSentOut e -> watches.taken(e.tag(), "helmet-sent-out", cause);
      case HelmetEvent.HelmetIssued e -> watches.taken(e.tag(), "helmet-issued", cause);
      case HelmetEvent.HelmetReceived e -> free(state, cause);
      case HelmetEvent.HelmetReturned e -> free(state, cause);
      case HelmetEvent.HelmetInspected e -> free(state, cause);
      case HelmetEvent.HelmetFreed e -> free(state, cause);
      case HelmetEvent.HelmetCameBack e -> free(state, cause);
      case HelmetEvent.HelmetOrdered e -> {}
      case HelmetEvent.HelmetRecertified e -> {}
      case HelmetEvent.HelmetMoved e -> {}
      case HelmetEvent.IssueRefused e -> {}
      case HelmetEvent.DamageReported e -> {}
    }
  }

  private void free(Helmet state, Cause cause) {
    if (state.state() == Helmet.State.AVAILABLE) {
      watches.free(state, cause);
    }
  }

  static StreamName stream(String tag) {
    return StreamName.of("helmet", tag, tag);
  }
}
