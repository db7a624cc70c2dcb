package org.tapeline.notify.place;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Names and time zones of places, copied again. */
@Singleton
class PlacesReadModel {
  @Produces
  @Singleton
  ReadModel places(Places places) {
    return ReadModel.of("places", ReadTable.of("place"))
        .fromPeers(copies -> places.declareOn(copies.events("inventory.events")));
  }
}
