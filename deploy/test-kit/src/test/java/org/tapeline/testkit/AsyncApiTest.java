package org.tapeline.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The document of the events")
class AsyncApiTest {
  private static final EventContracts CONTRACTS = EventContracts.load();
  private static final Pattern REFERENCE = Pattern.compile("\\$ref: \\./([a-z]+)/([a-z0-9.-]+)");
  private static final Pattern NAME = Pattern.compile("name: (org\\.tapeline\\.[a-z0-9.-]+)");
  private static final List<String> TOPICS =
      List.of("people", "sizing.events", "fitting.events", "inventory.events", "notify.events");

  @Test
  @DisplayName("lists every schema, and nothing that is not there")
  void complete() throws IOException {
    Set<String> files = new TreeSet<>();
    Set<String> names = new TreeSet<>();
    Matcher reference = REFERENCE.matcher(document());
    while (reference.find()) {
      files.add(
          "org.tapeline." + reference.group(1) + "." + reference.group(2).replace(".json", ""));
    }
    Matcher name = NAME.matcher(document());
    while (name.find()) {
      names.add(name.group(1));
    }
    Set<String> known = new TreeSet<>();
    TOPICS.forEach(topic -> known.addAll(CONTRACTS.typesOf(topic)));
    assertThat(files).isEqualTo(known);
    assertThat(names).isEqualTo(known);
  }

  @Test
  @DisplayName("points to schemas with an example that keeps them and a description a property")
  void described() {
    for (String topic : TOPICS) {
      for (String type : CONTRACTS.typesOf(topic)) {
        CONTRACTS.validateProduced(type, CONTRACTS.exampleOf(type));
        List<String> bare = new ArrayList<>();
        undescribed(CONTRACTS.schemaOf(type), "", bare);
        assertThat(bare).as(type + ": properties without a description").isEmpty();
      }
    }
  }

  private static void undescribed(JsonNode schema, String at, List<String> bare) {
    schema
        .path("properties")
        .properties()
        .forEach(
            property -> {
              String here = at + "/" + property.getKey();
              if (property.getValue().path("description").asText().isBlank()) {
                bare.add(here);
              }
              undescribed(property.getValue(), here, bare);
              undescribed(property.getValue().path("items"), here, bare);
            });
  }

  private static String document() throws IOException {
    return Files.readString(
        Path.of(System.getProperty("tapeline.root"), "docs", "events", "asyncapi.yaml"));
  }
}
