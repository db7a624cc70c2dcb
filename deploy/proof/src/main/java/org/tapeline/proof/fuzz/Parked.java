package org.tapeline.proof.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What the services could not apply, as they tell it. */
final class Parked {
  private Parked() {}

  /** By service, one line a parked event. */
  static Map<String, Set<String>> at(Target target) throws IOException {
    Map<String, Set<String>> parked = new TreeMap<>();
    for (String service : Target.SERVICES) {
      Set<String> lines = new LinkedHashSet<>();
      for (JsonNode event : target.get("/" + service + "/api/parked")) {
        lines.add(
            event.path("stream").asText()
                + " "
                + event.path("version").asText()
                + " "
                + event.path("type").asText()
                + ", "
                + event.path("reason").asText()
                + ": "
                + event.path("detail").asText());
      }
      parked.put(service, lines);
    }
    return parked;
  }
}
