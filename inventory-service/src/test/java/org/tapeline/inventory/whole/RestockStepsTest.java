package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.tapeline.inventory.whole.Depot.cancel;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.stateOfRequest;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.Locale;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A restock request")
class RestockStepsTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "requested, pick, picked",
    "requested, ship, shipped",
    "requested, receive, received",
    "requested, cancel, cancelled",
    "picked, ship, shipped",
    "picked, receive, received",
    "picked, cancel, cancelled",
    "shipped, receive, received",
    "shipped, cancel, cancelled",
  })
  @DisplayName("goes on when it is")
  void goesOn(String state, String step, String after) {
    String request = requestThatIs(state);
    does(request, step).statusCode(200).body("state", equalTo(after));
    assertThat(stateOfRequest(request)).isEqualTo(after.toUpperCase(Locale.ROOT));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "picked, pick, picked",
    "shipped, pick, picked",
    "shipped, ship, shipped",
    "received, pick, picked",
    "received, ship, shipped",
    "received, receive, received",
    "received, cancel, cancelled",
    "cancelled, pick, picked",
    "cancelled, ship, shipped",
    "cancelled, receive, received",
    "cancelled, cancel, cancelled",
  })
  @DisplayName("does not go back, nor twice, when it is")
  void refused(String state, String step, String notThat) {
    String request = requestThatIs(state);
    does(request, step)
        .statusCode(409)
        .contentType("application/problem+json")
        .body("type", endsWith("/restock-" + state))
        .body("detail", containsString("is " + state + " already and cannot be " + notThat));
    assertThat(stateOfRequest(request)).isEqualTo(state.toUpperCase(Locale.ROOT));
  }

  private String requestThatIs(String state) {
    Depot.places();
    try (Fitting fitting = new Fitting(bootstrap)) {
      UUID refitCase =
          fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(freshModel(), "youth-small"));
      String request =
          fitting.hears("replacement-missing", "refitCase", refitCase).at("/requests/0").asText();
      switch (state) {
        case "picked" -> does(request, "pick").statusCode(200);
        case "shipped" -> does(request, "ship").statusCode(200);
        case "received" -> does(request, "receive").statusCode(200);
        case "cancelled" -> does(request, "cancel").statusCode(200);
        default -> assertThat(state).isEqualTo("requested");
      }
      return request;
    }
  }

  private static ValidatableResponse does(String request, String step) {
    return step.equals("cancel") ? cancel(request, "mistake") : Depot.step(request, step);
  }
}
