package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.commandOf;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;
import static org.tapeline.sizing.whole.Drafting.chart;
import static org.tapeline.sizing.whole.Drafting.drafting;
import static org.tapeline.sizing.whole.Drafting.inForce;
import static org.tapeline.sizing.whole.Drafting.previewOf;
import static org.tapeline.sizing.whole.Drafting.publishing;
import static org.tapeline.sizing.whole.Drafting.size;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.whole.Broker.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A draft of a size chart")
class ChartDraftTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Test
  @DisplayName("changes nothing, tells what it would change, and does just that once published")
  void published() {
    importing("charts", "all-or-none", chart("draft-a", 550, 552)).statusCode(200);
    String deepInside = enrolledAt("NORTH");
    measure("fitter.north", deepInside, "530", "530").statusCode(200);
    String nearTheEdge = enrolledAt("NORTH");
    measure("fitter.north", nearTheEdge, "546", "546").statusCode(200);

    drafting(chart("draft-a", 540, 541)).body("accepted", equalTo(2));
    assertThat(size(nearTheEdge, "draft-a")).isEqualTo("youth-medium");
    as("manager").get("/api/charts").then().body(inForce("draft-a"), equalTo(1));

    JsonPath preview = previewOf("draft-a");
    assertThat(preview.getInt("version")).isEqualTo(1);
    assertThat(preview.getList("sizes.change"))
        .containsExactly("Ends 10 mm lower", "Starts 11 mm lower");
    String line = "players.find { it.number == '" + nearTheEdge + "' }";
    assertThat(preview.getString(line + ".name")).isEqualTo("Ada Quillfeather");
    assertThat(preview.getString(line + ".team")).isEqualTo("U10-HAWKS");
    assertThat(preview.getString(line + ".now.size")).isEqualTo("youth-medium");
    assertThat(preview.getString(line + ".then.size")).isEqualTo("youth-large");
    assertThat(preview.getList("players.number")).doesNotContain(deepInside);
    assertThat(preview.getInt("affected")).isEqualTo(preview.getList("players").size());

    UUID command = UUID.randomUUID();
    for (int i = 0; i < 2; i++) {
      publishing(command, "draft-a", 1, preview.getString("draft"))
          .statusCode(200)
          .body("version", equalTo(2));
    }
    assertThat(size(nearTheEdge, "draft-a")).isEqualTo("youth-large");
    measure("fitter.north", nearTheEdge, "546", "546").statusCode(200);
    measure("fitter.north", deepInside, "530", "530").statusCode(200);
    assertThat(advisedBetweenTwoMeasurements(nearTheEdge)).isEqualTo(2);
    assertThat(advisedBetweenTwoMeasurements(deepInside)).isEqualTo(1);
    as("manager").get("/api/charts/drafts").then().body("model", not(hasItem("draft-a")));
  }

  @Test
  @DisplayName("is refused when the chart in force has changed since somebody looked, or the draft")
  void outdated() {
    importing("charts", "all-or-none", chart("draft-b", 550, 552)).statusCode(200);
    drafting(chart("draft-b", 540, 541));
    String shown = previewOf("draft-b").getString("draft");
    importing("charts", "all-or-none", chart("draft-b", 545, 546)).statusCode(200);
    publishing(UUID.randomUUID(), "draft-b", 1, shown)
        .statusCode(409)
        .contentType("application/problem+json")
        .body("detail", containsString("chart in force has changed"))
        .body("detail", containsString("Look at the preview again"));
    drafting(chart("draft-b", 538, 539));
    publishing(UUID.randomUUID(), "draft-b", 2, shown)
        .statusCode(409)
        .body("detail", containsString("Another file was imported"));
    as("manager").get("/api/charts").then().body(inForce("draft-b"), equalTo(2));

    JsonPath again = previewOf("draft-b");
    assertThat(again.getList("sizes.change")).contains("Ends 7 mm lower");
    publishing(UUID.randomUUID(), "draft-b", again.getInt("version"), again.getString("draft"))
        .statusCode(200)
        .body("version", equalTo(3));
  }

  @Test
  @DisplayName("can be thrown away, and is gone then")
  void thrownAway() {
    drafting(chart("draft-c", 550, 552));
    String draft = previewOf("draft-c").getString("draft");
    UUID command = UUID.randomUUID();
    for (int i = 0; i < 2; i++) {
      as("manager")
          .header("Idempotency-Key", command)
          .delete("/api/charts/drafts/draft-c")
          .then()
          .statusCode(204);
    }
    as("manager").get("/api/charts/drafts").then().body("model", not(hasItem("draft-c")));
    as("manager").get("/api/charts").then().body("model", not(hasItem("draft-c")));
    publishing(UUID.randomUUID(), "draft-c", 0, draft)
        .statusCode(404)
        .body("detail", containsString("thrown away"));
  }

  @Test
  @DisplayName("is not kept of a chart that is in force already, and replaces an older one")
  void unchanged() {
    importing("charts", "all-or-none", chart("draft-d", 550, 552)).statusCode(200);
    drafting(chart("draft-d", 540, 541)).body("accepted", equalTo(2));
    drafting(chart("draft-d", 545, 546)).body("accepted", equalTo(2));
    assertThat(previewOf("draft-d").getList("sizes.change")).contains("Ends 5 mm lower");
    drafting(chart("draft-d", 550, 552)).body("accepted", equalTo(0), "unchanged", equalTo(2));
    as("manager").get("/api/charts/drafts").then().body("model", not(hasItem("draft-d")));
  }

  @Test
  @DisplayName("warns of a wide gap, by its row, and is refused for a wrong one")
  void warnings() {
    drafting(chart("draft-e", 540, 555));
    JsonPath gap = previewOf("draft-e");
    assertThat(gap.getList("warnings.row")).isEqualTo(List.of(3));
    assertThat(gap.getString("warnings[0].message")).contains("15 mm without a size");
    commandOf("manager")
        .contentType("text/csv")
        .queryParam("draft", "true")
        .body(chart("draft-f", 560, 541))
        .post("/api/import/charts")
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString("overlap"));
    as("manager").get("/api/charts/drafts").then().body("model", not(hasItem("draft-f")));
  }

  @Test
  @DisplayName("is the equipment manager's, and asked for in plain words")
  void whoAndHow() {
    as("fitter.north").get("/api/charts/drafts").then().statusCode(403);
    as("fitter.north").get("/charts/drafts").then().statusCode(403);
    as("coach.hawks").get("/charts/drafts").then().statusCode(403);
    commandOf("manager")
        .contentType("application/json")
        .body("{}")
        .post("/api/charts/drafts/draft-g/publish")
        .then()
        .statusCode(400)
        .body("errors.field", equalTo(List.of("version", "draft")));
    for (String wrong : List.of("/api/import/charts?draft=1", "/api/import/players?draft=true")) {
      commandOf("manager")
          .contentType("text/csv")
          .body(chart("draft-g", 550, 552))
          .post(wrong)
          .then()
          .statusCode(400)
          .body("errors.field", equalTo(List.of("draft")));
    }
    as("manager").get("/api/charts").then().body("model", not(hasItem("draft-g")));
  }

  /** How often the player was advised, as Kafka tells it, up to the second measurement. */
  private long advisedBetweenTwoMeasurements(String number) {
    UUID player = idOf(number);
    try (Broker broker = new Broker(kafka)) {
      List<Message> told =
          await()
              .atMost(Duration.ofSeconds(20))
              .until(() -> broker.ofKey("sizing.events", player), m -> measured(m).size() == 2);
      return told.subList(0, told.indexOf(measured(told).getLast())).stream()
          .filter(m -> m.is("size-advised"))
          .count();
    }
  }

  private static List<Message> measured(List<Message> told) {
    return told.stream().filter(m -> m.is("head-measured")).toList();
  }
}
