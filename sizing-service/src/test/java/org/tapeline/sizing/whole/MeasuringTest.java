package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.tapeline.sizing.whole.Association.CHARTS;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
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
@DisplayName("Measuring a player")
class MeasuringTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @BeforeEach
  void charts() {
    importing("charts", "all-or-none", CHARTS).statusCode(200);
  }

  @Test
  @DisplayName("gives value, plus-minus and size, and says both on Kafka under one correlation id")
  void measured() {
    String number = enrolledAt("NORTH");
    UUID command = UUID.randomUUID();
    as("fitter.north")
        .header("Idempotency-Key", command)
        .contentType("application/json")
        .body(Map.of("readings", List.of("22 7/8", "58,1 cm")))
        .post("/api/players/" + number + "/readings")
        .then()
        .statusCode(200)
        .header("Correlation-Id", equalTo(command.toString()))
        .body("inches", equalTo("22 7/8 in"))
        .body("method", equalTo("mean-of-two"))
        .body("saidBack", equalTo(List.of("22 7/8 in, 581 mm", "22 7/8 in, 581 mm")))
        .body("advice.find { it.model == 'model-a' }.size", equalTo("youth-large"))
        .body("advice.find { it.model == 'model-a' }.outcome", equalTo("in-size"));

    UUID player = idOf(number);
    try (Broker broker = new Broker(kafka)) {
      await().atMost(SOON).until(() -> broker.ofKey("sizing.events", player).size() == 3);
      List<Message> events = broker.ofKey("sizing.events", player);
      assertThat(events.get(1).is("head-measured")).isTrue();
      assertThat(events.get(1).data().at("/readings/0/entered").asText()).isEqualTo("22 7/8 in");
      assertThat(events.get(1).data().path("by").asText()).isEqualTo("fitter.north");
      assertThat(events.get(2).is("size-advised")).isTrue();
      assertThat(events.get(2).correlationId()).isEqualTo(command.toString());
    }
  }

  @Test
  @DisplayName(
      "sent twice under one id is done once and answered the same; another body is refused")
  void twice() {
    String number = enrolledAt("NORTH");
    UUID command = UUID.randomUUID();
    Response first = send(number, command, "534", "535");
    Response second = send(number, command, "534", "535");
    assertThat(second.asString()).isEqualTo(first.asString());
    send(number, command, "534", "536").then().statusCode(409);
    UUID player = idOf(number);
    measure("fitter.north", number, "535", "536").statusCode(200);
    try (Broker broker = new Broker(kafka)) {
      await()
          .atMost(SOON)
          .until(() -> count(broker.ofKey("sizing.events", player), "head-measured") >= 2);
      assertThat(count(broker.ofKey("sizing.events", player), "head-measured")).isEqualTo(2);
    }
  }

  @Test
  @DisplayName("asks for a third reading beyond 5 mm, then takes the median")
  void third() {
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, "530", "537")
        .statusCode(422)
        .contentType("application/problem+json")
        .body("type", endsWith("/third-reading-needed"))
        .body("detail", containsString("7 mm apart"));
    JsonPath measured =
        measure("fitter.north", number, "530", "537", "532")
            .statusCode(200)
            .body("method", equalTo("median-of-three"))
            .extract()
            .jsonPath();
    assertThat(measured.getDouble("valueMm")).isEqualTo(532);
  }

  @Test
  @DisplayName("refuses a reading that it does not understand, beside the reading")
  void notUnderstood() {
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, "21 in", "big")
        .statusCode(422)
        .body("errors[0].field", equalTo("readings[1]"))
        .body("errors[0].message", containsString("22 7/8 in"));
    measure("fitter.north", number, "21 in")
        .statusCode(422)
        .body("errors[0].field", equalTo("readings[1]"));
    measure("fitter.north", number, "", "21 in")
        .statusCode(422)
        .body("errors[0].field", equalTo("readings[0]"));
    measure("fitter.north", number, "21", "21", "21", "21").statusCode(422);
    as("manager").get("/api/players/" + number).then().body("head", nullValue());
  }

  @Test
  @DisplayName("asks before it takes a head that is smaller than last time, and keeps the answer")
  void smaller() {
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, "540", "541").statusCode(200);
    measure("fitter.north", number, "530", "531")
        .statusCode(422)
        .body("type", endsWith("/smaller-than-before"));
    Association.commandOf("fitter.north")
        .contentType("application/json")
        .body(Map.of("readings", List.of("530", "531"), "confirmed", true))
        .post("/api/players/" + number + "/readings")
        .then()
        .statusCode(200);
  }

  @Test
  @DisplayName("asks before it takes a head that hardly any child of the age has")
  void unusual() {
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, "640", "641")
        .statusCode(422)
        .body("type", endsWith("/unusual-for-age"))
        .body("detail", containsString("999 of 1000"));
    Association.commandOf("fitter.north")
        .contentType("application/json")
        .body(Map.of("readings", List.of("640", "641"), "confirmed", true))
        .post("/api/players/" + number + "/readings")
        .then()
        .statusCode(200);
  }

  @Test
  @DisplayName("is for the fitters of the player's field; the others are told so")
  void otherField() {
    String number = enrolledAt("NORTH");
    measure("fitter.south", number, "534", "535")
        .statusCode(403)
        .contentType("application/problem+json")
        .body("type", endsWith("/other-field"));
    as("fitter.south").get("/api/players/" + number).then().statusCode(403);
    as("fitter.south").get("/players/" + number).then().statusCode(403);
    as("fitter.south").get("/players/" + number + "/measure").then().statusCode(403);
    as("fitter.south")
        .get("/api/players?field=NORTH")
        .then()
        .statusCode(200)
        .body("size()", equalTo(0));
    as("fitter.north")
        .get("/api/players?field=NORTH&team=U10-HAWKS")
        .then()
        .statusCode(200)
        .body("find { it.number == '" + number + "' }", notNullValue());
  }

  @Test
  @DisplayName("of an unknown player, without a command id or with broken JSON is a problem")
  void refusals() {
    measure("fitter.north", "LV-9999", "534", "535")
        .statusCode(404)
        .contentType("application/problem+json");
    String number = enrolledAt("NORTH");
    as("fitter.north")
        .contentType("application/json")
        .body("{\"readings\":[\"534\",\"535\"]}")
        .post("/api/players/" + number + "/readings")
        .then()
        .statusCode(400)
        .body("detail", containsString("Idempotency-Key"));
    for (String broken : List.of("{\"readings\":[", "{\"readings\":\"534\"}", "")) {
      Association.commandOf("fitter.north")
          .contentType("application/json")
          .body(broken)
          .post("/api/players/" + number + "/readings")
          .then()
          .statusCode(400)
          .contentType("application/problem+json");
    }
  }

  @Test
  @DisplayName("is advised anew when a chart changes the advice, and only then")
  void newChart() {
    String number = enrolledAt("NORTH");
    UUID player = idOf(number);
    measure("fitter.north", number, "534", "534").statusCode(200);
    importing("charts", "all-or-none", "model,size,from,to,unit\nmodel-n,youth-small,500,560,mm\n")
        .statusCode(200);
    importing("charts", "all-or-none", "model,size,from,to,unit\nmodel-n,youth-small,500,560,mm\n")
        .statusCode(200);
    as("manager")
        .get("/api/players/" + number)
        .then()
        .body("advice.find { it.model == 'model-n' }.size", equalTo("youth-small"));
    measure("fitter.north", enrolledAt("NORTH"), "534", "534").statusCode(200);
    try (Broker broker = new Broker(kafka)) {
      await()
          .atMost(SOON)
          .until(() -> count(broker.ofKey("sizing.events", player), "size-advised") >= 2);
      assertThat(count(broker.ofKey("sizing.events", player), "size-advised")).isEqualTo(2);
    }
  }

  private static Response send(String number, UUID command, String... readings) {
    return as("fitter.north")
        .header("Idempotency-Key", command)
        .contentType("application/json")
        .body(Map.of("readings", List.of(readings)))
        .post("/api/players/" + number + "/readings");
  }

  private static long count(List<Message> messages, String event) {
    return messages.stream().filter(m -> m.is(event)).count();
  }
}
