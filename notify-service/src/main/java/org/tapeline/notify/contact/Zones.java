package org.tapeline.notify.contact;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.notify.place.Places;

/** In which time zone people live, as far as it can be told; in the caller's transaction. */
@ApplicationScoped
public class Zones {
  private final Contacts contacts;
  private final Places places;
  private final ZoneId association;

  Zones(
      Contacts contacts,
      Places places,
      @ConfigProperty(name = "tapeline.association.zone") ZoneId association) {
    this.contacts = contacts;
    this.places = places;
    this.association = association;
  }

  /** That of the player's field; the association's while the field is not known. */
  public ZoneId ofPlayer(UUID player) {
    return contacts.field(player).flatMap(places::knownZoneOf).orElse(association);
  }

  /** That of the first player whose field is known; else the association's. */
  public ZoneId ofGuardian(UUID guardian) {
    return contacts.playersOf(guardian).stream()
        .flatMap(player -> contacts.field(player).stream())
        .flatMap(field -> places.knownZoneOf(field).stream())
        .findFirst()
        .orElse(association);
  }

  /** Those of all fields and depots. */
  public List<ZoneId> ofFields() {
    return places.zones();
  }
}
