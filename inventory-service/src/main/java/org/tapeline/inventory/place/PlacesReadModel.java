package org.tapeline.inventory.place;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.inventory.place.PlaceListed.Way;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** The places as they were listed. */
@Singleton
class PlacesReadModel {
  @Produces
  @Singleton
  ReadModel places(Places places) {
    return ReadModel.of("places", ReadTable.of("place"), ReadTable.of("travel"))
        .fromJournal(PlaceListed.class, event -> show(places, (PlaceListed) event.data()));
  }

  private static void show(Places places, PlaceListed listed) {
    places.keep(
        new Places.Place(
            listed.place(), listed.name(), listed.kind(), listed.altitudeM(), listed.zone()));
    for (Way way : listed.travel()) {
      places.keepWay(listed.place(), way.to(), way.minutes());
    }
  }
}
