package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetWatch;
import org.tapeline.inventory.reservation.ReservationStore.Kept;
import org.tapeline.journal.Cause;

/** A kept helmet that is gone is searched anew; one that is free goes to who waits for it. */
@ApplicationScoped
public class WhenHelmetComesOrGoesThenServe implements HelmetWatch {
  private final Reservations reservations;
  private final ReservationStore store;
  private final PlannedHelmets planned;
  private final Database database;

  WhenHelmetComesOrGoesThenServe(
      Reservations reservations,
      ReservationStore store,
      PlannedHelmets planned,
      Database database) {
    this.reservations = reservations;
    this.store = store;
    this.planned = planned;
    this.database = database;
  }

  @Override
  public void taken(String tag, String why, Cause cause) {
    planned.forget(tag);
    holder(tag).flatMap(planned::forgetOf).ifPresent(free -> reservations.serve(free.key(), cause));
    Optional<Kept> live = store.liveOn(tag);
    if (live.isEmpty()) {
      return;
    }
    Kept kept = live.get();
    if (holder(tag).equals(Optional.of(kept.player()))) {
      reservations.fulfil(kept, cause);
    } else {
      reservations.release(kept, why, cause);
      reservations.reserveOrRequest(kept.refitCase(), tag, cause);
    }
  }

  @Override
  public void takenAll(List<String> tags, String why, Cause cause) {
    database
        .list(
            "select tag from helmet h where tag = any (string_to_array(?, ','))"
                + " and (planned_for is not null or exists"
                + " (select 1 from reservation r where r.tag = h.tag and r.status = 'live'))"
                + " order by tag",
            row -> row.getString(1),
            String.join(",", tags))
        .forEach(tag -> taken(tag, why, cause.step(cause.step() + "/" + tag)));
  }

  private Optional<UUID> holder(String tag) {
    return database.first(
        "select holder from helmet where tag = ? and holder is not null",
        row -> row.getObject(1, UUID.class),
        tag);
  }

  @Override
  public void free(String tag, String model, String size, Cause cause) {
    reservations.serve("helmet:" + model + ":" + size, cause);
  }
}
