package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import org.tapeline.inventory.restock.RestockEvent.RestockRequested;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Says what happens to requests; always in the caller's transaction. */
@ApplicationScoped
public class RestockJournal {
  /** After a hold thousands wait for one size: each is one event more, which must not grow. */
  private static final int CASES_NAMED = 50;

  private final RestockStore store;
  private final Journal journal;
  private final Clock clock;

  RestockJournal(RestockStore store, Journal journal, Clock clock) {
    this.store = store;
    this.journal = journal;
    this.clock = clock;
  }

  void requested(Restock r, Cause cause) {
    append(
        r,
        new RestockRequested(
            r.request(),
            r.kind().code(),
            r.place(),
            r.fromPlace(),
            r.item(),
            r.model(),
            r.size(),
            r.tag(),
            r.quantity(),
            r.forStock(),
            store.someCases(r.request(), CASES_NAMED),
            r.expectedAt(),
            clock.instant()),
        cause);
  }

  void append(Restock r, RestockEvent event, Cause cause) {
    StreamName stream = StreamName.of("restock", r.request(), r.place());
    long version = journal.version(stream);
    journal.append(stream, version, List.of((Record) event), cause);
  }
}
