package org.tapeline.inventory.restock;

import com.fasterxml.jackson.core.type.TypeReference;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.EventJson;

/** How long things take to come: data in {@code policy/lead-days.json}. */
@ApplicationScoped
public class RestockPolicy {
  private final Map<String, Integer> leadDays;
  private final LocalTime hour;

  RestockPolicy(@ConfigProperty(name = "tapeline.reservation.ready-hour") String hour) {
    this.hour = LocalTime.parse(hour);
    try (InputStream file = RestockPolicy.class.getResourceAsStream("/policy/lead-days.json")) {
      leadDays = EventJson.MAPPER.readValue(file, new TypeReference<Map<String, Integer>>() {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (!leadDays.keySet().containsAll(Set.of("helmet", "part"))
        || leadDays.values().stream().anyMatch(days -> days < 0)) {
      throw new IllegalStateException("lead-days.json needs days for helmet and part, 0 or more");
    }
  }

  /** When something from outside can be used at a place in that zone. */
  public Instant restocked(String item, Instant now, ZoneId zone) {
    return morning(now, days(item), zone);
  }

  int days(String item) {
    String kind = item.startsWith("helmet:") ? "helmet" : "part";
    return leadDays.getOrDefault(item, leadDays.get(kind));
  }

  boolean hasOwnDays(String item) {
    return leadDays.containsKey(item);
  }

  /** When something from another of our places can be used: the next morning there. */
  public Instant travelled(Instant now, ZoneId zone) {
    return morning(now, 1, zone);
  }

  private Instant morning(Instant now, int days, ZoneId zone) {
    return now.atZone(zone).toLocalDate().plusDays(days).atTime(hour).atZone(zone).toInstant();
  }
}
