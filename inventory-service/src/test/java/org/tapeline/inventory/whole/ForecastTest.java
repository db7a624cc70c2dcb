package org.tapeline.inventory.whole;

import static io.restassured.RestAssured.given;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.time.Duration;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A forecast of the season's sizes")
class ForecastTest {
  private static final String TYPE = "org.tapeline.sizing.size-mix-forecast.v1";
  private static final Duration SOON = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Test
  @DisplayName(
      "stands beside the stock, says where too few are there, and gives way to a newer one")
  void besideTheStock() {
    Depot.places();
    String model = freshModel();
    helmet(model, "youth-medium", "RIVER");
    try (TestKafka sizing = new TestKafka(kafka)) {
      sizing.publish(forecast(model, 1, 57, 66));
      await()
          .atMost(SOON)
          .untilAsserted(() -> stock().body(containsString("57 to 66"), containsString("too few")));
      sizing.publish(forecast(model, 2, 0, 1));
      await()
          .atMost(SOON)
          .untilAsserted(
              () -> stock().body(containsString("0 to 1"), not(containsString("57 to 66"))));
      stock().body(not(containsString("too few")));
    }
  }

  private static ValidatableResponse stock() {
    return given()
        .auth()
        .preemptive()
        .basic("manager", "larkfield")
        .get("/stock")
        .then()
        .statusCode(200);
  }

  private static Envelope forecast(String model, long version, int low, int high) {
    ObjectNode data = EventContracts.load().exampleOf(TYPE).deepCopy();
    data.put("model", model);
    ((ObjectNode) data.at("/sizes/0")).put("low", low).put("high", high);
    UUID id = UUID.randomUUID();
    return new Envelope(
        "sizing.events", TYPE, "forecast-" + model, version, model, id, id, id, data);
  }
}
