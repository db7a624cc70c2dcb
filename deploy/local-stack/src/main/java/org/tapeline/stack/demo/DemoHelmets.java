package org.tapeline.stack.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The helmets of the demo that nobody has been given yet. Chosen from the demo's file and not from
 * the stock, so that a load that broke off gives each player the same helmet when it runs again.
 */
final class DemoHelmets {
  private final List<Map<String, String>> free;

  DemoHelmets(Path file) throws IOException {
    this.free = new ArrayList<>(DemoFiles.rows(file));
  }

  /** A helmet. */
  record Helmet(String tag, String size) {}

  /** Takes the first helmet at the field in a size that the advice names. */
  Optional<Helmet> take(String field, List<JsonNode> advice) {
    for (JsonNode model : advice) {
      for (Map<String, String> row : free) {
        if (row.get("place").equals(field)
            && row.get("model").equals(model.path("model").asText())
            && row.get("size").equals(model.path("size").asText())) {
          free.remove(row);
          return Optional.of(new Helmet(row.get("tag"), row.get("size")));
        }
      }
    }
    return Optional.empty();
  }
}
