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
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
        broken.addAll(
            SchemaChanges.breaking(
                file, read(APPROVED.resolve(file)), read(CURRENT.resolve(file))));
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
  @DisplayName("is told from one with a field removed, retyped, narrowed, now absent or demanded")
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
      assertThat(faults(approved, changed)).hasSize(1);
    }
    assertThat(faults(approved, widened)).isEmpty();
  }

  @ParameterizedTest(name = "{0} {1} becomes {2}: {3}")
  @DisplayName("may be widened and not narrowed")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          enum      | ["mail","text"] | ["mail"]                | no longer has the code text
          enum      | ["mail","text"] | ["mail","text","voice"] |
          enum      |                 | ["mail","text"]         | is now limited to codes
          minimum   | 1               | 2                       | has a higher minimum
          minimum   | 2               | 1                       |
          maximum   |                 | 9                       | has a lower maximum
          maxLength | 60              | 40                      | has a lower maxLength
          maxLength | 60              |                         |
          pattern   | "^a$"           | "^b$"                   | has another pattern
          pattern   | "^a$"           |                         |
          format    |                 | "uuid"                  | has another type
          """)
  void narrowed(String rule, String was, String is, String fault) throws IOException {
    List<String> faults = faults(ruled(rule, was), ruled(rule, is));
    assertThat(faults).hasSize(fault == null ? 0 : 1);
    if (fault != null) {
      assertThat(faults).first().asString().contains("event code " + fault);
    }
  }

  private static JsonNode ruled(String rule, String value) throws IOException {
    ObjectNode schema = JSON.createObjectNode().put("type", "object");
    ObjectNode code = schema.putObject("properties").putObject("code").put("type", "string");
    if (value != null) {
      code.set(rule, JSON.readTree(value));
    }
    return schema;
  }

  @Test
  @DisplayName("of which there is a newer version stays beside it, numbered without a gap")
  void versions() throws IOException {
    for (String file : schemas(CURRENT)) {
      int version = Integer.parseInt(file.replaceAll(".*\\.v([0-9]+)\\.json", "$1"));
      for (int older = 1; older < version; older++) {
        String before = file.replaceAll("\\.v[0-9]+\\.json", ".v" + older + ".json");
        assertThat(schemas(CURRENT)).as(file).contains(before);
      }
    }
  }

  private static List<String> faults(JsonNode approved, JsonNode current) {
    return SchemaChanges.breaking("event", approved, current);
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
