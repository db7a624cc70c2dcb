package org.tapeline.fitting.place;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** What inventory says of places, copied again. */
@Singleton
class PlacesReadModel {
  @Produces
  @Singleton
  ReadModel places(PlaceEvents places) {
    return ReadModel.of("places", ReadTable.of("place"), ReadTable.of("travel"))
        .fromPeers(copies -> places.declareOn(copies.events("inventory.events")));
  }
}
