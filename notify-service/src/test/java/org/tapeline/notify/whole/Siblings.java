package org.tapeline.notify.whole;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;

/** Players who share one guardian, as sizing publishes them. */
final class Siblings {
  final UUID guardian = UuidV7.next();
  final Map<String, UUID> players = new LinkedHashMap<>();
  private final String language;
  private final String email;

  Siblings(String language, String email, String... firstNames) {
    this.language = language;
    this.email = email;
    for (String name : firstNames) {
      players.put(name, UuidV7.next());
    }
  }

  UUID player(String firstName) {
    return players.get(firstName);
  }

  Event tombstone(String firstName) {
    UUID id = player(firstName);
    return Event.of(
        "people", "org.tapeline.sizing.player-details.v1", "player-details-" + id, 9, id, null);
  }

  List<Event> details() {
    List<Event> events = new ArrayList<>();
    players.forEach(
        (name, player) ->
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
                        "givenName", name,
                        "familyName", "Quintanar",
                        "birthDate", "2015-05-05",
                        "team", "U10-HAWKS",
                        "field", "NORTH",
                        "guardians", List.of(guardian)))));
    events.add(
        Event.of(
            "people",
            "org.tapeline.sizing.guardian-details.v1",
            "guardian-details-" + guardian,
            1,
            guardian,
            Map.of(
                "guardian", guardian,
                "name", "Guardian of all",
                "email", email,
                "language", language,
                "players", List.copyOf(players.values()))));
    return events;
  }
}
