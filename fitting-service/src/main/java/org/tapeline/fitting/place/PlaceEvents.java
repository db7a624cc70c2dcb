package org.tapeline.fitting.place;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.journal.Subscription;

/** Copies what inventory says of places. */
@ApplicationScoped
public class PlaceEvents {

  record PlaceListed(
      String place, String name, String kind, double altitudeM, String zone, List<Way> travel) {
    record Way(String to, int minutes) {}
  }

  public void declareOn(Subscription subscription) {
    subscription.on(
        "org.tapeline.inventory.place-listed.v1", PlaceListed.class, (listed, e) -> keep(listed));
  }

  private static void keep(PlaceListed listed) {
    Place row = Place.findById(listed.place());
    if (row == null) {
      row = new Place();
      row.code = listed.place();
    }
    row.name = listed.name();
    row.kind = listed.kind();
    row.altitudeM = listed.altitudeM();
    row.zone = listed.zone();
    row.persist();
    Travel.delete("fromPlace", listed.place());
    Travel.getEntityManager().flush();
    for (PlaceListed.Way way : listed.travel()) {
      Travel travel = new Travel();
      travel.fromPlace = listed.place();
      travel.toPlace = way.to();
      travel.minutes = way.minutes();
      travel.persist();
    }
  }
}
