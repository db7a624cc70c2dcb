package org.tapeline.notify.wish;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tapeline.notify.contact.Zones;

/** The time zones that can be chosen on a page: those of the fields first, then the country's. */
@ApplicationScoped
class ZoneChoice {
  /** Of the United States, from the tz database (names from memory). */
  private static final List<String> COUNTRY =
      List.of(
          "America/New_York",
          "America/Chicago",
          "America/Denver",
          "America/Phoenix",
          "America/Los_Angeles",
          "America/Anchorage",
          "Pacific/Honolulu");

  private final Zones zones;

  ZoneChoice(Zones zones) {
    this.zones = zones;
  }

  /**
   * @param chosen what a person chose before stays among them; may be empty
   */
  List<String> of(String chosen) {
    Set<String> ids = new LinkedHashSet<>();
    if (!chosen.isEmpty()) {
      ids.add(chosen);
    }
    zones.ofFields().stream().map(ZoneId::getId).filter(id -> id.contains("/")).forEach(ids::add);
    ids.addAll(COUNTRY);
    return List.copyOf(ids);
  }
}
