package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
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
  private final HelmetWatch watch;
  private final HelmetDates dates;

  HelmetDesk(Journal journal, Database database, HelmetWatch watch, HelmetDates dates) {
    this.journal = journal;
    this.database = database;
    this.watch = watch;
    this.dates = dates;
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
   * Does it.
   *
   * @throws Problem when it is refused
   */
  public List<HelmetEvent> run(String tag, HelmetCommand command, Cause cause) {
    Loaded loaded = load(tag);
    HelmetCommand dated = dates.dated(loaded.helmet(), command);
    return switch (HelmetDecider.decide(loaded.helmet(), dated)) {
      case Refused refused -> throw Problem.conflict(refused.code(), refused.sentence());
      case Accepted accepted -> {
        keep(loaded, accepted.events(), cause);
        yield accepted.events();
      }
    };
  }

  /** Gives it to the player, whose former helmet comes back; or notes why it cannot be. */
  public void issue(String tag, HelmetCommand.Issue command, Cause cause) {
    Loaded loaded = load(tag);
    if (HelmetDecider.decide(loaded.helmet(), command) instanceof Accepted accepted) {
      if (accepted.events().get(0) instanceof HelmetEvent.HelmetIssued) {
        takeBackOthers(command.player(), tag, command, cause);
      }
      keep(loaded, accepted.events(), cause.step("issue"));
    }
  }

  private void takeBackOthers(UUID player, String tag, HelmetCommand.Issue command, Cause cause) {
    List<String> others =
        database.list(
            "select tag from helmet where holder = ? and tag <> ?",
            row -> row.getString(1),
            player,
            tag);
    others.forEach(
        other ->
            run(
                other,
                new HelmetCommand.Return(command.place(), command.at()),
                cause.step("take-back")));
  }

  private void keep(Loaded loaded, List<HelmetEvent> events, Cause cause) {
    String tag = loaded.helmet().tag();
    journal.append(
        stream(tag), loaded.version(), events.stream().map(e -> (Record) e).toList(), cause);
    Helmet state = loaded.helmet();
    for (HelmetEvent event : events) {
      state = Helmet.evolve(state, event);
      show(event, state);
      countMarks(event);
    }
    for (HelmetEvent event : events) {
      tell(event, state, cause);
    }
  }

  private void show(HelmetEvent event, Helmet state) {
    if (event instanceof HelmetEvent.HelmetOrdered e) {
      database.change(
          "insert into helmet (tag, model, size, lot, expected_on, place, state)"
              + " values (?, ?, ?, '', ?, ?, 'ordered')",
          e.tag(),
          e.model(),
          e.size(),
          e.expectedOn().orElse(null),
          e.place());
    } else if (event instanceof HelmetEvent.HelmetReceived e) {
      database.change(
          """
          insert into helmet
              (tag, model, size, lot, manufactured_on, certified_until, place, state)
            values (?, ?, ?, ?, ?, ?, ?, 'available')
            on conflict (tag) do update
            set model = excluded.model, size = excluded.size, lot = excluded.lot,
                manufactured_on = excluded.manufactured_on,
                certified_until = excluded.certified_until, place = excluded.place,
                state = excluded.state, expected_on = null
          """,
          e.tag(),
          e.model(),
          e.size(),
          e.lot(),
          e.manufacturedOn(),
          e.certifiedUntil().orElse(null),
          e.place());
    } else if (state.state() != Helmet.State.UNKNOWN) {
      database.change(
          """
          update helmet set state = ?, place = ?, holder = ?, certified_until = ?, on_hold = ?,
                 reserved_for = case when ? = 'available' then reserved_for end where tag = ?
          """,
          state.says(),
          state.place(),
          state.holder().orElse(null),
          state.certifiedUntil().orElse(null),
          !state.holds().isEmpty(),
          state.says(),
          state.tag());
    }
  }

  /** Reports of marks on the surface since it was last reconditioned: the search weighs them. */
  private void countMarks(HelmetEvent event) {
    if (event instanceof HelmetEvent.DamageReported e && e.severity().equals("cosmetic")) {
      database.change("update helmet set marks = marks + 1 where tag = ?", e.tag());
    } else if (event instanceof HelmetEvent.HelmetCameBack e) {
      database.change("update helmet set marks = 0 where tag = ?", e.tag());
    }
  }

  private void tell(HelmetEvent event, Helmet state, Cause cause) {
    switch (event) {
      case HelmetEvent.HelmetQuarantined e -> watch.taken(e.tag(), "helmet-quarantined", cause);
      case HelmetEvent.HelmetRetired e -> watch.taken(e.tag(), "helmet-retired", cause);
      case HelmetEvent.HelmetHeld e -> watch.taken(e.tag(), "helmet-held", cause);
      case HelmetEvent.HelmetSentOut e -> watch.taken(e.tag(), "helmet-sent-out", cause);
      case HelmetEvent.HelmetIssued e -> watch.taken(e.tag(), "helmet-issued", cause);
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
      watch.free(state.tag(), state.model(), state.size(), cause);
    }
  }

  private static StreamName stream(String tag) {
    return StreamName.of("helmet", tag, tag);
  }
}
