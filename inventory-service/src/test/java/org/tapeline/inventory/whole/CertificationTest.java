package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.importing;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.WhenHelmetIsUndatedThenDate;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The certification of a helmet")
class CertificationTest {
  /** Fitting's example of a sign-off is of August 2026. */
  private static final String BEFORE_THE_SIGN_OFF = "2026-07-31";

  private final String model = freshModel();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject Database database;
  @Inject WhenHelmetIsUndatedThenDate undated;

  @BeforeEach
  void places() {
    Depot.places();
  }

  private String received(LocalDate made, String label) {
    String header = "model,size,lot,manufactured_on,certified_until,place\n";
    String row = String.join(",", model, "youth-small", "C-1", made.toString(), label, "NORTH");
    importing("helmets", "all-or-none", header + row).statusCode(200);
    return as("manager").queryParam("model", model).get("/api/helmets").path("[0].tag");
  }

  private static String until(String tag) {
    return as("manager").get("/api/helmets/" + tag).path("certifiedUntil");
  }

  private static ValidatableResponse label(String tag, Object until) {
    return commandOf("depot")
        .contentType("application/json")
        .body("{\"certifiedUntil\":\"" + until + "\"}")
        .post("/api/helmets/" + tag + "/certification")
        .then();
  }

  @Test
  @DisplayName("without a label ends by the cautious rule, a year after manufacture")
  void noLabel() {
    String tag = received(LocalDate.parse("2026-01-15"), "");
    assertThat(until(tag)).isEqualTo("2027-01-14");
  }

  @Test
  @DisplayName("never outlasts the helmet's last age, whatever a label says")
  void lastAge() {
    String tag = received(LocalDate.parse("2018-01-15"), "2031-01-01");
    assertThat(until(tag)).isEqualTo("2027-01-14");
    label(tag, "2032-01-01").statusCode(200).body("certifiedUntil", equalTo("2027-01-14"));
  }

  @Test
  @DisplayName("read from its label anew lets the helmet be issued, and without it nobody gets it")
  void readAnew() {
    String tag = received(LocalDate.parse("2023-07-01"), BEFORE_THE_SIGN_OFF);
    try (Fitting fitting = new Fitting(bootstrap)) {
      fitting.signsOff(UUID.randomUUID(), tag, "NORTH");
      JsonNode refused = fitting.hears("issue-refused", "tag", tag);
      assertThat(refused.get("why").asText()).isEqualTo("out-of-certification");
      label(tag, LocalDate.now().plusYears(1)).statusCode(200);
      assertThat(fitting.hears("helmet-recertified", "tag", tag).get("how").asText())
          .isEqualTo("label-read");
      UUID player = UUID.randomUUID();
      fitting.signsOff(player, tag, "NORTH");
      assertThat(fitting.hears("helmet-issued", "tag", tag).get("player").asText())
          .isEqualTo(player.toString());
    }
  }

  @Test
  @DisplayName("of a helmet that was taken in without a date is dated by the rule, once")
  void undated() {
    String tag = received(LocalDate.parse("2026-02-01"), "");
    database.change("update helmet set certified_until = null where tag = ?", tag);
    try (Fitting fitting = new Fitting(bootstrap)) {
      undated.look();
      undated.look();
      assertThat(until(tag)).isEqualTo("2027-01-31");
      assertThat(fitting.hears("helmet-recertified", "tag", tag).get("how").asText())
          .isEqualTo("policy");
    }
    String page = as("manager").get("/helmets/" + tag).asString();
    assertThat(page.split("by the policy, as no label was read", -1)).hasSize(2);
  }

  @Test
  @DisplayName("is asked for as a date")
  void noDate() {
    String tag = received(LocalDate.parse("2026-02-01"), "");
    commandOf("depot")
        .contentType("application/json")
        .body("{}")
        .post("/api/helmets/" + tag + "/certification")
        .then()
        .statusCode(400)
        .body("errors[0].message", containsString("2027-08-01"));
    label(tag, "soon").statusCode(400);
  }
}
