package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Receipt.Came;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.inventory.restock.RestockEvent.RestockCancelled;
import org.tapeline.inventory.restock.RestockEvent.RestockPicked;
import org.tapeline.inventory.restock.RestockEvent.RestockReceived;
import org.tapeline.inventory.restock.RestockEvent.RestockShipped;
import org.tapeline.inventory.restock.RestockWatch.Waits;
import org.tapeline.journal.Cause;
import org.tapeline.journal.quarkus.http.Problem;

/** What the warehouse does with a request; always in the caller's transaction. */
@ApplicationScoped
public class RestockWork {
  private final RestockDesk desk;
  private final RestockStore store;
  private final RestockJournal journal;
  private final RestockPolicy policy;
  private final RestockWatch watch;
  private final Arrival arrival;
  private final WhenStockIsLowThenRequest low;
  private final Places places;
  private final Clock clock;

  RestockWork(
      RestockDesk desk,
      RestockStore store,
      RestockJournal journal,
      RestockPolicy policy,
      RestockWatch watch,
      Arrival arrival,
      WhenStockIsLowThenRequest low,
      Places places,
      Clock clock) {
    this.desk = desk;
    this.store = store;
    this.journal = journal;
    this.policy = policy;
    this.watch = watch;
    this.arrival = arrival;
    this.low = low;
    this.places = places;
    this.clock = clock;
  }

  Restock pick(UUID request, String by, Cause cause) {
    Restock r = step(request, State.PICKED, Optional.empty());
    store.untaken(request);
    journal.append(
        r, new RestockPicked(request, r.place(), r.quantity(), by, clock.instant()), cause);
    return r;
  }

  /** What is sent today is there the next morning; a later day that was promised stands. */
  Restock ship(UUID request, String by, Cause cause) {
    Instant next = policy.travelled(clock.instant(), places.zone(store.locked(request).place()));
    Restock r = step(request, State.SHIPPED, Optional.of(next));
    journal.append(
        r,
        new RestockShipped(request, r.place(), r.quantity(), by, clock.instant(), r.expectedAt()),
        cause);
    return r;
  }

  Restock cancel(UUID request, String why, String by, Cause cause) {
    Restock asked = desk.held(request);
    List<Waits> causes = store.causes(request);
    if (why.equals("not-needed") && asked.allows(State.CANCELLED)) {
      refuseWhileNeeded(watch.waiting(asked, causes));
    }
    Restock r = step(request, State.CANCELLED, Optional.empty());
    journal.append(r, new RestockCancelled(request, r.place(), why, by, clock.instant()), cause);
    watch.cancelled(r, causes, cause);
    return r;
  }

  private static void refuseWhileNeeded(long waiting) {
    if (waiting > 0) {
      throw Problem.conflict(
          "still-needed",
          (waiting == 1 ? "1 re-fit case waits" : waiting + " re-fit cases wait")
              + " for this. Cancel it as not-available or as a mistake, and something else is"
              + " looked for or asked for again.");
    }
  }

  Restock receive(UUID request, Receipt receipt, String by, Cause cause) {
    Restock asked = desk.held(request);
    Came came = receipt.of(asked);
    Restock r = step(request, State.RECEIVED, Optional.empty());
    store.came(request, came);
    List<String> tagged = arrival.tagsOf(asked, receipt, came.good());
    journal.append(r, received(r, came, tagged, by), cause);
    List<Waits> causes = store.causes(request);
    arrival.book(r, receipt, came, tagged, by, cause);
    if (came.nothing()) {
      watch.cancelled(r, causes, cause);
    } else {
      watch.arrived(r, causes, came.good() > 0, cause);
    }
    if (came.good() < r.quantity()) {
      low.lowered(r.place(), r.item(), cause);
    }
    return r;
  }

  private RestockReceived received(Restock r, Came came, List<String> tagged, String by) {
    return new RestockReceived(
        r.request(),
        r.place(),
        came.good(),
        came.missing(),
        came.damaged(),
        came.over(),
        tagged,
        by,
        clock.instant());
  }

  private Restock step(UUID request, State next, Optional<Instant> notBefore) {
    Restock r = store.locked(request);
    if (!r.allows(next)) {
      throw Problem.conflict(
          "restock-" + r.says(),
          "The request is " + r.says() + " already and cannot be " + next.code() + ".");
    }
    Instant expected = notBefore.filter(at -> at.isAfter(r.expectedAt())).orElse(r.expectedAt());
    Restock changed = r.changed(r.quantity(), r.forStock(), next, expected);
    store.save(changed, clock.instant());
    return changed;
  }
}
