package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.time.Duration;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A helmet's page")
class HelmetLifeTest {
  private static final Duration LONG = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @BeforeEach
  void places() {
    Depot.places();
  }

  private static String page(String user, String tag) {
    return as(user).get("/helmets/" + tag).then().statusCode(200).extract().asString();
  }

  private static ValidatableResponse form(String tag, String step, String value) {
    return as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("value", value)
        .post("/helmets/" + tag + "/" + step)
        .then();
  }

  @Test
  @DisplayName("tells every fit in it once, though each was said twice, and who had it")
  void fits() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    UUID player = UUID.randomUUID();
    try (Fitting fitting = new Fitting(bootstrap)) {
      fitting.fits(player, tag, "NORTH");
      fitting.signsOff(player, tag, "NORTH");
      fitting.withdraws(player, tag, "fit-failed");
      await()
          .atMost(LONG)
          .untilAsserted(
              () ->
                  assertThat(page("manager", tag))
                      .contains("Sign-off withdrawn: fit failed", "Fit passed at NORTH"));
      String page = page("fitter.north", tag);
      assertThat(page).contains("/fitting/players/" + player, "Fit failed at NORTH: snug");
      for (String once :
          new String[] {"Tried on", "Fit failed", "Fit passed", "Signed off", "Issued to"}) {
        assertThat(page).as(once).containsOnlyOnce(once);
      }
    }
  }

  @Test
  @DisplayName("shows the policy's rule and last day, and is for looking only for a fitter")
  void rule() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    assertThat(page("fitter.north", tag))
        .contains("Certified for", "Last day of its age", "Printed on")
        .doesNotContain("/retire\"");
    assertThat(page("depot", tag)).contains("/retire\"", "/move\"").doesNotContain("/return\"");
    as("fitter.north")
        .formParam("commandId", UUID.randomUUID())
        .formParam("value", "age")
        .post("/helmets/" + tag + "/retire")
        .then()
        .statusCode(403);
  }

  @Test
  @DisplayName("lets the warehouse note a label, move it and retire it, with errors at the field")
  void work() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    form(tag, "move", "RIVER").statusCode(303);
    form(tag, "move", "NOWHERE").statusCode(400).body(containsString("move-error"));
    form(tag, "certification", "08/01/2027")
        .statusCode(400)
        .body(containsString("certification-error"))
        .body(containsString("value=\"08/01/2027\""));
    form(tag, "certification", "2027-01-31").statusCode(303);
    form(tag, "retire", "").statusCode(400).body(containsString("retire-error"));
    form(tag, "return", "NORTH").statusCode(409).body(containsString("available"));
    form(tag, "retire", "lost").statusCode(303);
    assertThat(stateOf(tag)).isEqualTo("retired");
    assertThat(page("depot", tag))
        .contains("Moved from NORTH to RIVER", "Certified until Jan 31, 2027, read by depot")
        .contains("Retired: Lost")
        .doesNotContain("class=\"work");
  }
}
