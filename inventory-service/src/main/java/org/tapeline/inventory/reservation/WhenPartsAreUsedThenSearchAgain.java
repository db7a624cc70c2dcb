package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.reservation.ReservationStore.Kept;
import org.tapeline.inventory.stock.StockDesk;
import org.tapeline.inventory.stock.StockWatch;
import org.tapeline.journal.Cause;

/** A part that was kept for one player and fitted to another is searched anew. */
@ApplicationScoped
public class WhenPartsAreUsedThenSearchAgain implements StockWatch {
  private static final UUID NOBODY = new UUID(0, 0);

  private final Reservations reservations;
  private final ReservationStore store;
  private final StockDesk stock;

  WhenPartsAreUsedThenSearchAgain(
      Reservations reservations, ReservationStore store, StockDesk stock) {
    this.reservations = reservations;
    this.store = store;
    this.stock = stock;
  }

  @Override
  public void used(String place, String item, UUID player, Cause cause) {
    List<Kept> others = store.keptForOthers(place, item, player);
    int left = Math.max(0, stock.pieces(place, item));
    others.stream().skip(left).forEach(kept -> searchAgain(kept, "fitted", cause));
  }

  /** Where fewer are left than are kept, what is kept too much is searched anew; then who waits. */
  @Override
  public void changed(String place, String item, Cause cause) {
    List<Kept> kept = store.keptForOthers(place, item, NOBODY);
    int left = Math.max(0, stock.pieces(place, item));
    kept.stream().skip(left).forEach(k -> searchAgain(k, "recounted", cause));
    reservations.serve(item, cause);
  }

  private void searchAgain(Kept kept, String why, Cause cause) {
    reservations.release(kept, why, cause);
    reservations.reserveOrRequest(kept.refitCase(), "", cause);
  }
}
