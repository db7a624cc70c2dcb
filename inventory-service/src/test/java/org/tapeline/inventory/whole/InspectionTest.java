package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;
import static org.tapeline.inventory.whole.Shelves.pieces;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.time.Instant;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A helmet in quarantine")
class InspectionTest {
  private final EventContracts contracts = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  private String tag;

  @BeforeEach
  void cracked() {
    Depot.places();
    tag = helmet("model-b", "youth-small", "SOUTH");
    damage("fitter.south", tag, "shell", "dent").statusCode(200);
  }

  private ValidatableResponse inspect(String outcome, String findings, String parts) {
    String body =
        "{\"outcome\":\"%s\",\"findings\":[%s],\"parts\":[%s]}".formatted(outcome, findings, parts);
    return commandOf("depot")
        .contentType("application/json")
        .body(body)
        .post("/api/helmets/" + tag + "/inspection")
        .then();
  }

  @Test
  @DisplayName("goes back to stock with a part, which leaves the stock of its place")
  void partReplaced() {
    int before = pieces("SOUTH", "chin-strap-small");
    inspect("back-to-stock", "\"part-replaced\"", "\"chin-strap-small\"")
        .statusCode(200)
        .body("state", equalTo("available"));
    assertThat(pieces("SOUTH", "chin-strap-small")).isEqualTo(before - 1);
    try (Fitting fitting = new Fitting(bootstrap)) {
      JsonNode inspected = fitting.hears("helmet-inspected", "tag", tag);
      assertThat(inspected.get("parts").get(0).asText()).isEqualTo("chin-strap-small");
      assertThat(inspected.get("rulesVersion").asInt()).isPositive();
      contracts.validateProduced("org.tapeline.inventory.helmet-inspected.v1", inspected);
      JsonNode moved = fitting.hears("part-moved", "why", "inspection");
      assertThat(moved.get("to").asText()).isEqualTo("outside:used");
      contracts.validateProduced("org.tapeline.inventory.part-moved.v1", moved);
      JsonNode reported = fitting.hears("damage-reported", "tag", tag);
      assertThat(reported.get("rulesVersion").asInt()).isEqualTo(2);
    }
  }

  @Test
  @DisplayName("is issued on no sign-off from before its inspection, however late that comes")
  void lateSignOff() {
    Instant before = Instant.now();
    inspect("back-to-stock", "\"surface-only\"", "").statusCode(200);
    try (Fitting fitting = new Fitting(bootstrap)) {
      UUID late = fitting.signsOffAt(before, UUID.randomUUID(), tag, "SOUTH");
      JsonNode refused = fitting.hears("issue-refused", "session", late);
      assertThat(refused.get("why").asText()).isEqualTo("pulled-after-fit");
      contracts.validateProduced("org.tapeline.inventory.issue-refused.v1", refused);
      assertThat(stateOf(tag)).isEqualTo("available");

      UUID fitted = fitting.signsOffAt(Instant.now(), UUID.randomUUID(), tag, "SOUTH");
      fitting.hears("helmet-issued", "session", fitted);
      assertThat(stateOf(tag)).isEqualTo("issued");
    }
  }

  @Test
  @DisplayName("never takes a part of another model")
  void otherModel() {
    int before = pieces("SOUTH", "liner-crown");
    inspect("back-to-stock", "\"part-replaced\"", "\"liner-crown\"")
        .statusCode(422)
        .body("errors[0].field", equalTo("parts"))
        .body("detail", containsString("not listed for Model B"));
    inspect("back-to-stock", "\"part-replaced\"", "\"visor\"").statusCode(422);
    assertThat(stateOf(tag)).isEqualTo("quarantined");
    assertThat(pieces("SOUTH", "liner-crown")).isEqualTo(before);
  }

  @Test
  @DisplayName("with a finding that forbids it stays out of stock, and is told why")
  void forbidden() {
    inspect("back-to-stock", "\"cleaned\",\"cracked\"", "")
        .statusCode(422)
        .body("detail", containsString("A cracked helmet is not worn again"));
    inspect("back-to-stock", "\"label-missing\"", "").statusCode(422);
    assertThat(stateOf(tag)).isEqualTo("quarantined");
    inspect("retire", "\"cracked\"", "").statusCode(200).body("state", equalTo("retired"));
  }

  @Test
  @DisplayName("stands in the list of those that wait, until it was inspected")
  void waiting() {
    as("depot")
        .get("/inspections?place=SOUTH")
        .then()
        .statusCode(200)
        .body(containsString(tag), containsString("Shell: dented or bent"));
    as("depot").get("/inspections?place=NORTH").then().body(not(containsString(tag)));
    as("fitter.south").get("/inspections").then().statusCode(403);
    inspect("back-to-stock", "\"surface-only\"", "").statusCode(200);
    as("depot").get("/inspections").then().body(not(containsString(tag)));
  }

  @Test
  @DisplayName("is inspected by form, which says beside the field what is wrong and keeps the rest")
  void form() {
    String path = "/helmets/" + tag + "/inspection";
    as("depot").get(path).then().statusCode(200).body(containsString("Nothing found"));
    as("depot").get("/helmets/" + tag).then().body(containsString("Nothing found"));
    as("depot")
        .formParam("commandId", UUID.randomUUID())
        .formParam("outcome", "back-to-stock")
        .formParam("findings", "cleaned", "part-replaced")
        .post(path)
        .then()
        .statusCode(422)
        .body(containsString("id=\"parts-error\""))
        .body(containsString("value=\"cleaned\" checked"));
    as("depot")
        .formParam("commandId", UUID.randomUUID())
        .formParam("outcome", "back-to-stock")
        .post(path)
        .then()
        .statusCode(400)
        .body(containsString("id=\"findings-error\""));
    as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("outcome", "back-to-stock")
        .formParam("findings", "cleaned")
        .formParam("parts", "")
        .post(path)
        .then()
        .statusCode(303);
    assertThat(stateOf(tag)).isEqualTo("available");
  }
}
