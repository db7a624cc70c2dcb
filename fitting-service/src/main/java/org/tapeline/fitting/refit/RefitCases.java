package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDays;
import org.tapeline.fitting.refit.RefitCommand.Outcome;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/** Re-fit cases, one open at most a player; always in the caller's transaction. */
@ApplicationScoped
public class RefitCases {
  private final Journal journal;
  private final FitDays fitDays;
  private final Clock clock;

  RefitCases(Journal journal, FitDays fitDays, Clock clock) {
    this.journal = journal;
    this.fitDays = fitDays;
    this.clock = clock;
  }

  /** Sees to it that the player gets a new fit, by a new case or by the one that is open. */
  void need(UUID player, RefitRules.Ask ask, Cause cause) {
    Optional<PlayerCopy> here = PlayerCopy.locked(player).filter(PlayerCopy::playsHere);
    if (here.isEmpty()) {
      OwedRefit.add(player, ask, cause.correlationId());
      return;
    }
    Optional<RefitCaseRow> open = RefitCaseRow.openOf(player);
    if (open.filter(row -> RefitRules.covers(row.ask(), ask)).isEmpty()) {
      close(player, Outcome.CANCELLED, cause);
      open(here.get(), ask, cause);
    }
  }

  /**
   * The player's open case goes along to another field: as a new one, so that what is kept for it
   * is brought there.
   */
  void follow(UUID player, Cause cause) {
    Optional<RefitCaseRow> open = RefitCaseRow.openOf(player);
    Optional<PlayerCopy> here = PlayerCopy.locked(player).filter(PlayerCopy::playsHere);
    if (open.isEmpty() || here.isEmpty()) {
      return;
    }
    RefitCaseRow row = open.get();
    if (row.field.equals(here.get().field)) {
      row.team = here.get().team;
      row.persistAndFlush();
    } else {
      RefitRules.Ask ask = row.ask();
      close(player, Outcome.CANCELLED, cause);
      open(here.get(), ask, cause);
    }
  }

  private void open(PlayerCopy player, RefitRules.Ask ask, Cause cause) {
    RefitCommand.Open open =
        new RefitCommand.Open(
            DerivedId.from(cause.id(), "refit/" + player.player),
            player.player,
            player.field,
            player.team,
            ask.why(),
            ask.tag(),
            ask.needs(),
            clock.instant());
    handle(open.refitCase(), player.player, open, cause, "open-refit");
  }

  /** Closes the player's open case, if there is one, and frees its slot. */
  void close(UUID player, Outcome outcome, Cause cause) {
    RefitCaseRow.lockedOpenOf(player)
        .ifPresent(
            row -> {
              RefitCommand.Close close =
                  new RefitCommand.Close(row.refitCase, player, outcome, clock.instant());
              handle(row.refitCase, player, close, cause, "close-refit");
              fitDays.free(row.refitCase);
            });
  }

  /** Rises with every booking of the case, as calendars need it; 0 without any. */
  long revisionOf(UUID refitCase, UUID player) {
    return journal.load(StreamName.of("refit", refitCase, player)).stream()
        .filter(event -> event.data() instanceof RefitEvent.RefitBooked)
        .mapToLong(RecordedEvent::version)
        .max()
        .orElse(0);
  }

  /** True when it led to something. */
  boolean handle(UUID refitCase, UUID player, RefitCommand command, Cause cause, String step) {
    StreamName stream = StreamName.of("refit", refitCase, player);
    List<RecordedEvent> history = journal.load(stream);
    RefitCase state = RefitCase.NONE;
    for (RecordedEvent event : history) {
      state = RefitDecider.evolve(state, (RefitEvent) event.data());
    }
    List<RefitEvent> events = RefitDecider.decide(state, command);
    if (!events.isEmpty()) {
      journal.append(
          stream,
          history.size(),
          events.stream().map(e -> (Record) e).toList(),
          cause.step(cause.step() + "/" + step));
      events.forEach(RefitCaseRow::show);
    }
    return !events.isEmpty();
  }
}
