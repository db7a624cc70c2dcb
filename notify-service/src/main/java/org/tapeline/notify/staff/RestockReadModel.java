package org.tapeline.notify.staff;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;
import org.tapeline.notify.restock.RestockCopies;

/** The restock requests that are open, copied again and told to nobody. */
@Singleton
class RestockReadModel {
  @Produces
  @Singleton
  ReadModel restock(RestockCopies copies) {
    return ReadModel.of("restock", ReadTable.of("restock_open"))
        .fromPeers(
            on ->
                copies
                    .declareOn(on.events("inventory.events"))
                    .on(
                        "org.tapeline.inventory.restock-requested.v1",
                        RestockRequested.class,
                        (requested, event) -> copies.requested(DepotNotices.copy(requested))));
  }
}
