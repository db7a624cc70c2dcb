package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tapeline.inventory.reservation.ReservationStore.Kept;
import org.tapeline.inventory.restock.Restock;
import org.tapeline.inventory.restock.RestockWatch;
import org.tapeline.journal.Cause;

/** What came goes to who waits for it; who waits in vain has it looked for and requested again. */
@ApplicationScoped
public class WhenRestockReceivedThenServeWaiting implements RestockWatch {
  private final Reservations reservations;
  private final Cases cases;
  private final ReservationStore store;
  private final Clock clock;

  WhenRestockReceivedThenServeWaiting(
      Reservations reservations, Cases cases, ReservationStore store, Clock clock) {
    this.reservations = reservations;
    this.cases = cases;
    this.store = store;
    this.clock = clock;
  }

  @Override
  public void arrived(Restock restock, List<Waits> causes, boolean usable, Cause cause) {
    if (restock.betweenPlaces() && usable) {
      causes.forEach(waits -> store.arrived(waits, restock, clock.instant()));
      return;
    }
    if (restock.betweenPlaces()) {
      release(restock, causes, "damaged", cause);
      return;
    }
    if (!restock.ofHelmet()) {
      reservations.serve(restock.item(), cause);
    }
    serve(causes, cause);
  }

  private void serve(List<Waits> causes, Cause cause) {
    causes.stream()
        .map(Waits::refitCase)
        .collect(Collectors.toCollection(TreeSet::new))
        .forEach(refitCase -> reservations.reserveOrRequest(refitCase, "", cause));
  }

  @Override
  public long waiting(Restock restock, List<Waits> causes) {
    return causes.stream()
        .filter(w -> restock.betweenPlaces() ? kept(restock, w).isPresent() : cases.waits(w))
        .map(Waits::refitCase)
        .distinct()
        .count();
  }

  private Optional<Kept> kept(Restock transfer, Waits waits) {
    return store.liveOf(waits.refitCase()).stream()
        .filter(kept -> kept.travelsBy(transfer))
        .findFirst();
  }

  @Override
  public void cancelled(Restock restock, List<Waits> causes, Cause cause) {
    if (restock.betweenPlaces()) {
      release(restock, causes, "transfer-cancelled", cause);
    } else {
      serve(causes, cause);
    }
  }

  /** A case whose replacement was released before this was served then. */
  private void release(Restock restock, List<Waits> causes, String why, Cause cause) {
    String not = restock.tag().or(restock::fromPlace).orElse("");
    for (Waits waits : causes) {
      Optional<Kept> live = kept(restock, waits);
      if (live.isPresent()) {
        reservations.release(live.get(), why, cause);
        reservations.reserveOrRequest(waits.refitCase(), not, cause);
      }
    }
  }
}
