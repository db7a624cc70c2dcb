package org.tapeline.notify.place;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.Subscription;

/** Names and time zones of places; always in the caller's transaction. */
@ApplicationScoped
public class Places {

  public Subscription declareOn(Subscription subscription) {
    return subscription.on(
        "org.tapeline.inventory.place-listed.v1",
        PlaceListed.class,
        (listed, event) -> keep(listed));
  }

  /** The name as people say it; the code while the place is not known here. */
  public String nameOf(String code) {
    Place place = Place.findById(code);
    return place == null ? code : place.name;
  }

  /** The time zone of a place; UTC while the place is not known here. */
  public ZoneId zoneOf(String code) {
    Place place = Place.findById(code);
    return place == null ? ZoneOffset.UTC : ZoneId.of(place.zone);
  }

  /** The time zone of a place; empty while the place is not known here. */
  public Optional<ZoneId> knownZoneOf(String code) {
    return Place.<Place>findByIdOptional(code).map(place -> ZoneId.of(place.zone));
  }

  /** The time zones of all places, each once. */
  public List<ZoneId> zones() {
    return Place.<Place>listAll().stream().map(p -> ZoneId.of(p.zone)).distinct().toList();
  }

  private static void keep(PlaceListed listed) {
    Place place = Place.findById(listed.place());
    if (place == null) {
      place = new Place();
      place.place = listed.place();
    }
    place.name = listed.name();
    place.zone = ZoneId.of(listed.zone()).getId();
    place.persist();
  }
}
