package org.tapeline.notify.whole;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;

/** A player with guardians, as sizing publishes them. */
final class Family {
  final UUID player = UuidV7.next();
  final String firstName;
  private final List<Map<String, Object>> guardians = new ArrayList<>();

  Family(String firstName) {
    this.firstName = firstName;
  }

  Family guardian(String language, String email) {
    return guardian(language, email, null);
  }

  /**
   * @param email and {@code phone}: {@code null} for none
   */
  Family guardian(String language, String email, String phone) {
    Map<String, Object> details = new LinkedHashMap<>();
    details.put("guardian", UuidV7.next());
    details.put("name", "Guardian of " + firstName);
    if (email != null) {
      details.put("email", email);
    }
    if (phone != null) {
      details.put("phone", phone);
    }
    details.put("language", language);
    details.put("players", List.of(player));
    guardians.add(details);
    return this;
  }

  UUID guardianId(int index) {
    return (UUID) guardians.get(index).get("guardian");
  }

  List<Event> details() {
    List<Event> events = new ArrayList<>();
    events.add(
        Event.of(
            "people",
            "org.tapeline.sizing.player-details.v1",
            "player-details-" + player,
            1,
            player,
            Map.of(
                "player", player,
                "number", "LV-0001",
                "givenName", firstName,
                "familyName", "Quintanar",
                "birthDate", "2015-05-05",
                "team", "U10-HAWKS",
                "field", "NORTH",
                "guardians", guardians.stream().map(g -> g.get("guardian")).toList())));
    for (Map<String, Object> details : guardians) {
      events.add(
          Event.of(
              "people",
              "org.tapeline.sizing.guardian-details.v1",
              "guardian-details-" + details.get("guardian"),
              1,
              details.get("guardian"),
              details));
    }
    return events;
  }

  Event guardianTombstone(int index) {
    UUID id = guardianId(index);
    return Event.of(
        "people", "org.tapeline.sizing.guardian-details.v1", "guardian-details-" + id, 9, id, null);
  }

  Event playerTombstone() {
    return Event.of(
        "people",
        "org.tapeline.sizing.player-details.v1",
        "player-details-" + player,
        9,
        player,
        null);
  }
}
