package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.tapeline.sizing.whole.Association.CHARTS;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.whole.Broker.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Correcting a head")
class CorrectionTest {
  private static final String SIZE = "advice.find { it.model == 'model-a' }.size";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @BeforeEach
  void charts() {
    importing("charts", "all-or-none", CHARTS).statusCode(200);
  }

  @Test
  @DisplayName("changes value and advice; Kafka tells both heads and the new advice")
  void corrected() {
    String number = measured("574", "575");
    as("manager").get("/api/players/" + number).then().body(SIZE, equalTo("youth-large"));
    correct("fitter.north", UUID.randomUUID(), number, misread("534", "535"))
        .statusCode(200)
        .body("withdrawn", equalTo(false))
        .body("valueMm", equalTo(534.5f))
        .body(SIZE, equalTo("youth-medium"));
    as("manager")
        .get("/api/players/" + number)
        .then()
        .body("head.valueMm", equalTo(534.5f))
        .body(SIZE, equalTo("youth-medium"));
    UUID player = idOf(number);
    try (Broker broker = new Broker(kafka)) {
      await()
          .atMost(Duration.ofSeconds(20))
          .until(() -> broker.ofKey("sizing.events", player).size() == 5);
      List<Message> events = broker.ofKey("sizing.events", player);
      assertThat(events.get(1).data().path("valueMm").asDouble()).isEqualTo(574.5);
      assertThat(events.get(3).is("head-corrected")).isTrue();
      assertThat(events.get(3).data().path("corrects").asLong()).isEqualTo(2);
      assertThat(events.get(3).data().path("why").asText()).isEqualTo("misread");
      assertThat(events.get(3).data().path("by").asText()).isEqualTo("fitter.north");
      assertThat(events.get(4).is("size-advised")).isTrue();
    }
  }

  @Test
  @DisplayName("of another player withdraws it: the head before counts again")
  void withdrawn() {
    String number = measured("534", "535");
    measure("fitter.north", number, "574", "575").statusCode(200);
    correct("fitter.north", UUID.randomUUID(), number, wrongPlayer(head(number)))
        .statusCode(200)
        .body("withdrawn", equalTo(true))
        .body("valueMm", equalTo(534.5f))
        .body(SIZE, equalTo("youth-medium"));
    as("manager").get("/api/players/" + number).then().body("head.valueMm", equalTo(534.5f));
  }

  @Test
  @DisplayName("that was the only one leaves neither a head nor advice, until somebody measures")
  void onlyOne() {
    String number = measured("534", "535");
    correct("fitter.north", UUID.randomUUID(), number, wrongPlayer(2)).statusCode(200);
    as("manager")
        .get("/api/players/" + number)
        .then()
        .body("head", nullValue())
        .body("advice", hasSize(0));
    UUID player = idOf(number);
    try (Broker broker = new Broker(kafka)) {
      await()
          .atMost(Duration.ofSeconds(20))
          .until(() -> broker.ofKey("sizing.events", player).size() == 5);
      Message last = broker.ofKey("sizing.events", player).getLast();
      assertThat(last.is("size-advised")).isTrue();
      assertThat(last.data().path("advice").isEmpty()).isTrue();
    }
    measure("fitter.north", number, "534", "535").statusCode(200);
    as("manager").get("/api/players/" + number).then().body(SIZE, equalTo("youth-medium"));
  }

  @Test
  @DisplayName("sent twice under one id is done once; the head may be corrected again")
  void twice() {
    String number = measured("574", "575");
    UUID command = UUID.randomUUID();
    String first =
        correct("fitter.north", command, number, misread("544", "545")).extract().asString();
    assertThat(correct("fitter.north", command, number, misread("544", "545")).extract().asString())
        .isEqualTo(first);
    correct("fitter.north", UUID.randomUUID(), number, misread("534", "535")).statusCode(200);
    UUID player = idOf(number);
    try (Broker broker = new Broker(kafka)) {
      await()
          .atMost(Duration.ofSeconds(20))
          .until(
              () -> {
                List<Message> events = broker.ofKey("sizing.events", player);
                return events.getLast().is("size-advised")
                    && events.getLast().data().path("valueMm").asDouble() == 534.5;
              });
      assertThat(broker.ofKey("sizing.events", player).stream().filter(m -> m.is("head-corrected")))
          .hasSize(2);
    }
  }

  @Test
  @DisplayName("is for the measurer and the equipment manager, and only among the last 20")
  void whose() {
    String number = enrolledAt("NORTH");
    measure("manager", number, "574", "575").statusCode(200);
    correct("fitter.north", UUID.randomUUID(), number, misread("534", "535"))
        .statusCode(422)
        .body("type", endsWith("/not-yours-to-correct"));
    correct("fitter.south", UUID.randomUUID(), number, misread("534", "535")).statusCode(403);
    String mine = measured("574", "575");
    correct("manager", UUID.randomUUID(), mine, misread("534", "535")).statusCode(200);
    for (int i = 0; i < 20; i++) {
      measured("534", "535");
    }
    correct("fitter.north", UUID.randomUUID(), mine, misread("536", "537"))
        .statusCode(422)
        .body("type", endsWith("/not-yours-to-correct"));
  }

  @Test
  @DisplayName("says beside each field what is missing or wrong, and asks for a third reading")
  void refusals() {
    String number = measured("574", "575");
    correct("fitter.north", UUID.randomUUID(), number, Map.of("version", 2, "why", "tired"))
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors[0].field", equalTo("why"));
    correct("fitter.north", UUID.randomUUID(), number, Map.of("version", 2, "why", "misread"))
        .statusCode(422)
        .body("errors.field", equalTo(List.of("readings[0]", "readings[1]")));
    correct("fitter.north", UUID.randomUUID(), number, misread("534", "544"))
        .statusCode(422)
        .body("type", endsWith("/third-reading-needed"));
    correct("fitter.north", UUID.randomUUID(), number, misread("640", "641"))
        .statusCode(422)
        .body("type", endsWith("/unusual-for-age"));
    Map<String, Object> both =
        Map.of("version", 2, "why", "wrong-player", "readings", List.of("534", "535"));
    correct("fitter.north", UUID.randomUUID(), number, both)
        .statusCode(422)
        .body("errors.field", equalTo(List.of("readings[0]", "readings[1]")));
    correct("fitter.north", UUID.randomUUID(), number, wrongPlayer(9))
        .statusCode(422)
        .body("type", endsWith("/no-such-head"));
    as("manager").get("/api/players/" + number).then().body("head.valueMm", equalTo(574.5f));
  }

  private static String measured(String... readings) {
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, readings).statusCode(200);
    return number;
  }

  private static int head(String number) {
    return as("manager").get("/api/players/" + number).then().extract().path("head.version");
  }

  private static Map<String, Object> misread(String... readings) {
    return Map.of("version", 2, "why", "misread", "readings", List.of(readings));
  }

  private static Map<String, Object> wrongPlayer(int version) {
    return Map.of("version", version, "why", "wrong-player");
  }

  private static ValidatableResponse correct(
      String user, UUID command, String number, Map<String, Object> body) {
    return as(user)
        .header("Idempotency-Key", command)
        .contentType("application/json")
        .body(body)
        .post("/api/players/" + number + "/corrections")
        .then();
  }
}
