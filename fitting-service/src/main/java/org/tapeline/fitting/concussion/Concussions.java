package org.tapeline.fitting.concussion;

import static java.util.stream.Collectors.toUnmodifiableSet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.tapeline.fitting.concussion.ConcussionDecider.State;
import org.tapeline.fitting.concussion.ConcussionEvent.ConcussionSuspected;
import org.tapeline.fitting.signoff.OutOfPlay;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/** Suspected concussions, one stream a player, always in the caller's transaction. */
@ApplicationScoped
public class Concussions implements OutOfPlay {
  private final Journal journal;
  private final SuspicionOutcome outcome;

  Concussions(Journal journal, SuspicionOutcome outcome) {
    this.journal = journal;
    this.outcome = outcome;
  }

  /** Decides, records and does what follows. */
  ConcussionDecision handle(UUID player, ConcussionCommand command, Cause cause) {
    StreamName stream = StreamName.of("concussion", player, player);
    List<RecordedEvent> history = journal.load(stream);
    State state = State.IN_PLAY;
    for (RecordedEvent event : history) {
      state = ConcussionDecider.evolve(state, (ConcussionEvent) event.data());
    }
    ConcussionDecision decision = ConcussionDecider.decide(state, command);
    if (decision instanceof ConcussionDecision.Accepted accepted) {
      journal.append(stream, history.size(), List.of((Record) accepted.event()), cause);
      OutOfPlayRow.show(accepted.event());
      if (accepted.event() instanceof ConcussionSuspected suspected) {
        outcome.suspected(suspected, cause);
      }
    }
    return decision;
  }

  @Override
  public Set<UUID> among(Collection<UUID> players) {
    return OutOfPlayRow.of(players).stream().map(row -> row.player).collect(toUnmodifiableSet());
  }
}
