package org.tapeline.fitting.place;

import static java.util.stream.Collectors.toSet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
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
    row.persistAndFlush();
    Set<String> reached = listed.travel().stream().map(PlaceListed.Way::to).collect(toSet());
    Travel.of(listed.place()).stream()
        .filter(way -> !reached.contains(way.toPlace))
        .forEach(Travel::delete);
    Travel.flush();
    listed.travel().forEach(way -> Travel.keep(listed.place(), way.to(), way.minutes()));
  }
}
