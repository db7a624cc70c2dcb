package org.tapeline.acceptance;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * A player who is advised a size and a free helmet of that size at the player's field; each once,
 * so that tests do not meet.
 */
record FieldStory(String player, String number, String tag, String size) {
  static final String FITTER = "fitter.north";
  private static final Set<String> TAKEN = new HashSet<>();

  static synchronized FieldStory next() {
    JsonNode pack = Tapeline.get(FITTER, "/fitting/api/field-pack");
    for (JsonNode player : reversed(pack.path("players"))) {
      boolean busy =
          StreamSupport.stream(pack.path("sessions").spliterator(), false)
              .anyMatch(s -> s.path("player").equals(player.path("player")));
      if (busy || TAKEN.contains(player.path("player").asText())) {
        continue;
      }
      for (JsonNode helmet : reversed(pack.path("helmets"))) {
        if (suits(player, helmet) && TAKEN.add(helmet.path("tag").asText())) {
          TAKEN.add(player.path("player").asText());
          return new FieldStory(
              player.path("player").asText(),
              player.path("number").asText(),
              helmet.path("tag").asText(),
              helmet.path("size").asText());
        }
      }
    }
    throw new IllegalStateException("No player and helmet are left for the test");
  }

  private static boolean suits(JsonNode player, JsonNode helmet) {
    return helmet.path("state").asText().equals("available")
        && helmet.path("keptFor").isEmpty()
        && helmet.path("place").equals(player.path("field"))
        && !TAKEN.contains(helmet.path("tag").asText())
        && StreamSupport.stream(player.path("advised").spliterator(), false)
            .anyMatch(
                a ->
                    a.path("model").equals(helmet.path("model"))
                        && a.path("size").equals(helmet.path("size")));
  }

  private static Iterable<JsonNode> reversed(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false).toList().reversed();
  }

  /** The state that the coach sees. */
  String state() {
    return Tapeline.get(FITTER, "/fitting/api/players/" + player).at("/state/code").asText();
  }

  static JsonNode session(String id) {
    return Tapeline.get(FITTER, "/fitting/api/sessions/" + id);
  }
}
