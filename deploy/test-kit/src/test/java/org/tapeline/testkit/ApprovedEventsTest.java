package org.tapeline.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A version of an event that was approved keeps what consumers and the journals rely on: the rule
 * stands in {@code docs/events/README.md}.
 */
@DisplayName("An approved event")
class ApprovedEventsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path ROOT = Path.of(System.getProperty("tapeline.root"));
  private static final Path APPROVED = ROOT.resolve("deploy/test-kit/src/test/approved-events");
  private static final Path CURRENT = ROOT.resolve("docs/events");

  @Test
  @DisplayName("keeps its fields, their types and which of them are always there")
  void kept() throws IOException {
    List<String> broken = new ArrayList<>();
    for (String file : schemas(APPROVED)) {
      if (Files.notExists(CURRENT.resolve(file))) {
        broken.add(file + " was removed");
      } else {
        compare(file, read(APPROVED.resolve(file)), read(CURRENT.resolve(file)), broken);
      }
    }
    assertThat(broken).as("breaks a consumer or an old event: make a new version").isEmpty();
  }

  @Test
  @DisplayName("is there for each schema: copy a new one to approved-events")
  void complete() throws IOException {
    assertThat(schemas(APPROVED)).isNotEmpty().containsAll(schemas(CURRENT));
  }

  @Test
  @DisplayName("is told from one with a field removed, retyped, now absent or now demanded")
  void noticed() throws IOException {
    JsonNode approved = read(APPROVED.resolve("notify/notice-sent.v1.json"));
    ObjectNode removed = approved.deepCopy();
    ((ObjectNode) removed.get("properties")).remove("attempt");
    ObjectNode retyped = approved.deepCopy();
    ((ObjectNode) retyped.at("/properties/attempt")).put("type", "string");
    ObjectNode nowAbsent = approved.deepCopy();
    ((ArrayNode) nowAbsent.get("required")).remove(0);
    ObjectNode demanded = approved.deepCopy();
    ((ArrayNode) demanded.get("required")).add("new");
    ObjectNode widened = approved.deepCopy();
    ((ObjectNode) widened.get("properties")).putObject("new").put("type", "string");
    for (ObjectNode changed : List.of(removed, retyped, nowAbsent, demanded)) {
      assertThat(faults(approved, changed)).isNotEmpty();
    }
    assertThat(faults(approved, widened)).isEmpty();
  }

  private static List<String> faults(JsonNode approved, JsonNode current) {
    List<String> broken = new ArrayList<>();
    compare("event", approved, current, broken);
    return broken;
  }

  private static void compare(String at, JsonNode was, JsonNode is, List<String> broken) {
    if (!was.path("type").equals(is.path("type"))
        || !was.path("format").equals(is.path("format"))) {
      broken.add(at + " has another type");
    }
    if (!names(was.path("required")).equals(names(is.path("required")))) {
      broken.add(at + " requires other fields");
    }
    was.path("properties")
        .properties()
        .forEach(
            field -> {
              JsonNode now = is.path("properties").path(field.getKey());
              String here = at + " " + field.getKey();
              if (now.isMissingNode()) {
                broken.add(here + " was removed");
              } else {
                compare(here, field.getValue(), now, broken);
              }
            });
    if (was.has("items")) {
      compare(at + " items", was.path("items"), is.path("items"), broken);
    }
  }

  private static Set<String> names(JsonNode required) {
    Set<String> names = new TreeSet<>();
    required.forEach(name -> names.add(name.asText()));
    return names;
  }

  private static List<String> schemas(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .map(file -> folder.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  private static JsonNode read(Path file) throws IOException {
    return JSON.readTree(file.toFile());
  }
}
