package org.tapeline.proof.fuzz.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One good event of every type, from the examples in the schemas. */
final class EventSamples {
  private static final ObjectMapper JSON = new ObjectMapper();

  private EventSamples() {}

  /**
   * An event.
   *
   * @param type as the header says it
   */
  record Sample(String topic, String type, JsonNode data) {}

  static List<Sample> in(Path root) throws IOException {
    List<Sample> samples = new ArrayList<>();
    try (Stream<Path> files = Files.walk(root.resolve("docs/events"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        String service = file.getParent().getFileName().toString();
        String event = file.getFileName().toString().replaceFirst("\\.json$", "");
        String topic = event.contains("-details.") ? "people" : service + ".events";
        samples.add(
            new Sample(
                topic,
                "org.tapeline." + service + "." + event,
                JSON.readTree(file.toFile()).at("/examples/0")));
      }
    }
    return samples;
  }
}
