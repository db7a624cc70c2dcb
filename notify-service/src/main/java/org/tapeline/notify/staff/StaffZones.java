package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import org.tapeline.notify.place.Places;

/** On whose clock staff read times: their place's, or the association's where they have none. */
@ApplicationScoped
public class StaffZones {
  private final Staff staff;
  private final Places places;

  StaffZones(Staff staff, Places places) {
    this.staff = staff;
    this.places = places;
  }

  /**
   * @param recipient a staff id
   */
  public ZoneId of(String recipient) {
    return staff.placeOf(recipient).flatMap(places::knownZoneOf).orElse(staff.zone());
  }
}
