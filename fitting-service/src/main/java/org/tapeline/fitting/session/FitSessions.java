package org.tapeline.fitting.session;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Fit sessions as streams of events, with what their end leads to; in the caller's transaction. */
@ApplicationScoped
public class FitSessions {
  private final Journal journal;
  private final Protocols protocols;
  private final SessionOutcome afterwards;
  private final EventsKnown known;

  FitSessions(Journal journal, Protocols protocols, SessionOutcome afterwards, EventsKnown known) {
    this.journal = journal;
    this.protocols = protocols;
    this.afterwards = afterwards;
    this.known = known;
  }

  FitSession load(UUID session) {
    return fold(journal.load(stream(session, session)));
  }

  /**
   * Decides, records and does what follows.
   *
   * @throws Problem when it is refused
   */
  FitSession handle(UUID session, UUID player, FitSessionCommand command, Cause cause) {
    StreamName stream = stream(session, player);
    List<RecordedEvent> history = journal.load(stream);
    known.mustBe(history.size());
    FitSession state = fold(history);
    return switch (FitSessionDecider.decide(state, command, protocols.inForce())) {
      case Decision.Refused r -> throw refused(r);
      case Decision.Accepted a -> {
        journal.append(
            stream, history.size(), a.events().stream().map(e -> (Record) e).toList(), cause);
        FitSession now = state;
        for (FitSessionEvent event : a.events()) {
          now = FitSessionEvolver.evolve(now, event);
          tell(event, now, cause);
        }
        FitSessionRow.show(now, command.at());
        yield now;
      }
    };
  }

  private static Problem refused(Decision.Refused r) {
    return new Problem(
        422,
        r.code(),
        "Not recorded",
        r.sentence(),
        r.field().isEmpty() ? List.of() : List.of(new FieldError(r.field(), r.sentence())));
  }

  private void tell(FitSessionEvent event, FitSession now, Cause cause) {
    if (event instanceof FitSessionEvent.FitPassed passed) {
      afterwards.passed(passed, cause);
    } else if (event instanceof FitSessionEvent.FitFailed failed) {
      afterwards.failed(failed, cause);
    } else if (event instanceof FitSessionEvent.PassTakenBack back) {
      afterwards.takenBack(back, now.helmet().orElseThrow(), cause);
    }
  }

  private static FitSession fold(List<RecordedEvent> history) {
    return FitSessionEvolver.fold(history.stream().map(e -> (FitSessionEvent) e.data()).toList());
  }

  private static StreamName stream(UUID session, UUID player) {
    return StreamName.of("session", session, player);
  }
}
