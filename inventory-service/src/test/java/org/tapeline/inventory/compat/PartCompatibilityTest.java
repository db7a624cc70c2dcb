package org.tapeline.inventory.compat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.compat.PartCompatibility.Part;
import org.tapeline.journal.EventJson;

@DisplayName("A part")
class PartCompatibilityTest {
  private static final PartCompatibility TABLE =
      new PartCompatibility(
          1,
          "test",
          List.of(
              new Part("pad", List.of("model-a", "model-b"), false),
              new Part("strap", List.of("model-a", "model-b"), true),
              new Part("liner", List.of("model-a"), false)));

  private final PartCompatibility inForce = new CompatibilityTable().inForce();

  @Test
  @DisplayName("fits the models that the table names, and no other")
  void named() {
    assertThat(TABLE.fits("liner", "model-a")).isTrue();
    assertThat(TABLE.fits("liner", "model-b")).isFalse();
    assertThat(TABLE.fits("liner", "model-z")).isFalse();
  }

  @Test
  @DisplayName("that the table does not name fits nothing")
  void unknown() {
    assertThat(TABLE.knows("visor")).isFalse();
    assertThat(TABLE.fits("visor", "model-a")).isFalse();
    assertThat(TABLE.fits("visor", "", "model-a")).isFalse();
  }

  @Test
  @DisplayName("kept for one model goes into another only where the table says so")
  void acrossModels() {
    assertThat(TABLE.fits("pad", "model-a", "model-a")).isTrue();
    assertThat(TABLE.fits("pad", "model-a", "model-b")).isFalse();
    assertThat(TABLE.fits("strap", "model-a", "model-b")).isTrue();
    assertThat(TABLE.fits("strap", "model-z", "model-b")).isFalse();
    assertThat(TABLE.fits("liner", "", "model-a")).isTrue();
    assertThat(TABLE.fits("liner", "", "model-b")).isFalse();
  }

  @Test
  @DisplayName("is listed once, with a model, in a table that has a version and a source")
  void refused() {
    Part pad = new Part("pad", List.of("model-a"), false);
    assertThatThrownBy(() -> new Part("pad", List.of(), false)).hasMessageContaining("models");
    assertThatThrownBy(() -> new Part("pad", List.of("model-a", "model-a"), false))
        .hasMessageContaining("once");
    assertThatThrownBy(() -> new Part("Pad", List.of("model-a"), false))
        .hasMessageContaining("code");
    assertThatThrownBy(() -> new PartCompatibility(1, "test", List.of(pad, pad)))
        .hasMessageContaining("twice");
    assertThatThrownBy(() -> new PartCompatibility(1, " ", List.of(pad)))
        .hasMessageContaining("source");
  }

  @Test
  @DisplayName("of the fit protocol is in the table in force, for the models that may take it")
  void protocol() throws IOException {
    Path file = Path.of("../fitting-service/src/main/resources/protocol/youth-football.json");
    JsonNode protocol = EventJson.MAPPER.readTree(Files.readString(file));
    Set<String> items = new TreeSet<>();
    protocol.get("rows").forEach(row -> row.forEach(item -> items.add(item.asText())));
    protocol.get("remedies").forEach(r -> r.get("items").forEach(i -> items.add(i.asText())));
    assertThat(items).isNotEmpty().allMatch(inForce::knows);
    for (JsonNode model : protocol.get("models")) {
      for (JsonNode item : model.get("fitted")) {
        assertThat(inForce.fits(item.asText(), model.get("model").asText())).isTrue();
      }
    }
  }

  @Test
  @DisplayName("of the demo's stock is kept only for models that it fits")
  void demo() throws IOException {
    List<String> lines =
        Files.readAllLines(Path.of("../deploy/demo/larkfield-valley/parts.csv")).stream()
            .skip(1)
            .toList();
    for (String line : lines) {
      String[] cell = line.split(",");
      assertThat(inForce.knows(cell[1])).as(line).isTrue();
      assertThat(cell[2].isEmpty() || inForce.fits(cell[1], cell[2])).as(line).isTrue();
    }
  }
}
