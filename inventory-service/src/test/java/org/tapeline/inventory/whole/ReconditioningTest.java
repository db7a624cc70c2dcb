package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.importing;
import static org.tapeline.inventory.whole.Depot.stateOf;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
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
@DisplayName("Reconditioning")
class ReconditioningTest {
  private static final List<String> SIZES = List.of("youth-small", "youth-medium", "youth-large");
  private static final String FORECAST = "org.tapeline.sizing.size-mix-forecast.v1";

  /** In a season to come, which ends on November 15; what goes is back on October 1. */
  private final LocalDate inSeason = LocalDate.of(LocalDate.now().getYear() + 1, 8, 20);

  private final String model = freshModel();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @BeforeEach
  void places() {
    Depot.places();
  }

  @Test
  @DisplayName(
      "of 60 helmets in three sizes leaves enough of each, and the numbers agree to the end")
  void season() {
    receiveSixty();
    forecastNeedsOfEachSize(10);
    JsonPath plan = planOnceKnown();
    assertThatEnoughStays(plan);
    List<String> going = going(plan, "DEPOT");
    assertThat(going).hasSizeGreaterThanOrEqualTo(15).hasSizeLessThanOrEqualTo(36);

    String batch = begin(going);
    pack(batch, going.subList(1, going.size()));
    does(batch, "send", Map.of())
        .body("state", equalTo("sent"), "helmets", equalTo(going.size() - 1));
    assertThat(stateOf(going.getFirst())).as("not packed, so it stays").isEqualTo("available");
    List<String> sent = going.subList(1, going.size());
    sent.forEach(tag -> assertThat(stateOf(tag)).isEqualTo("at-reconditioner"));

    String rejected = sent.get(0);
    String missing = sent.get(1);
    List<String> good = sent.subList(2, sent.size());
    receive(batch, "recertified", good);
    does(batch, "receive", Map.of("outcome", "rejected", "cost", "12", "tags", List.of(rejected)));
    long cost = 4550L * good.size() + 1200;
    does(batch, "close", Map.of())
        .body("state", equalTo("closed, short"), "costCents", equalTo((int) cost));
    good.forEach(tag -> assertThat(stateOf(tag)).isEqualTo("available"));
    assertThat(stateOf(rejected)).isEqualTo("retired");
    assertThat(stateOf(missing)).isEqualTo("at-reconditioner");
    as("depot").get("/reconditioning").then().statusCode(200).body(containsString(missing));
    try (Fitting peers = new Fitting(kafka)) {
      var closed = peers.hears("batch-closed", "batch", batch);
      assertThat(closed.path("costCents").asLong()).isEqualTo(cost);
      assertThat(closed.at("/missing/0").asText()).isEqualTo(missing);
    }
    does(batch, "receive", Map.of("outcome", "lost", "tags", List.of(missing)));
    assertThat(stateOf(missing)).isEqualTo("retired");
  }

  @Test
  @DisplayName("takes a helmet that went out of quarantine and was not mended back into quarantine")
  void asItWent() {
    String tag = Depot.helmet(model, "youth-small", "RIVER");
    Depot.damage("manager", tag, "shell", "crack").statusCode(200);
    String batch = begin(List.of(tag), "RIVER");
    pack(batch, List.of(tag));
    does(batch, "send", Map.of());
    does(batch, "receive", Map.of("outcome", "as-it-went"));
    assertThat(stateOf(tag)).isEqualTo("quarantined");
  }

  @Test
  @DisplayName("does a command that is sent twice once, and keeps a helmet to one batch")
  void onlyOnce() {
    String tag = Depot.helmet(model, "youth-small", "RIVER");
    UUID id = UUID.randomUUID();
    String first = beginWith(id, List.of(tag), "RIVER").statusCode(200).extract().path("batch");
    String again = beginWith(id, List.of(tag), "RIVER").statusCode(200).extract().path("batch");
    assertThat(again).isEqualTo(first);
    beginWith(UUID.randomUUID(), List.of(tag), "RIVER")
        .statusCode(400)
        .body("detail", containsString("in a batch already"));
  }

  @Test
  @DisplayName("is packed and taken back on its pages, which keep what was typed")
  void pages() {
    String tag = Depot.helmet(model, "youth-small", "RIVER");
    String batch = begin(List.of(tag), "RIVER");
    form(batch, "pack", "tag", "WRONG1").statusCode(400).body(containsString("value=\"WRONG1\""));
    form(batch, "pack", "tag", tag).statusCode(303);
    as("depot")
        .get("/reconditioning/" + batch + "/sheet")
        .then()
        .statusCode(200)
        .body(containsString(tag));
    form(batch, "send", "tag", "").statusCode(303);
    as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("which", "all")
        .formParam("outcome", "recertified")
        .formParam("certifiedUntil", "")
        .formParam("cost", "99.99")
        .post("/reconditioning/" + batch + "/receive")
        .then()
        .statusCode(400)
        .body(containsString("Read the new label"), containsString("value=\"99.99\""));
    as("depot")
        .get("/reconditioning/due.csv")
        .then()
        .statusCode(200)
        .body(containsString("tag,model,size"));
    as("coach.hawks").get("/reconditioning").then().statusCode(403);
  }

  @Test
  @DisplayName("leads to an outlook of purchases with its picture and its file")
  void outlook() {
    Depot.helmet(model, "youth-small", "RIVER");
    forecastNeedsOfEachSize(10);
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(
            () ->
                as("manager")
                    .get("/outlook")
                    .then()
                    .statusCode(200)
                    .body(
                        containsString("Helmets to buy for each season"), containsString("<svg")));
    String file =
        as("manager").get("/outlook/outlook.csv").then().statusCode(200).extract().asString();
    assertThat(file.lines().filter(line -> line.contains(",all,"))).hasSize(5);
    as("fitter.north").get("/outlook").then().statusCode(403);
  }

  private void receiveSixty() {
    LocalDate beforeBack = inSeason.plusDays(20);
    LocalDate midSeason = inSeason.plusDays(60);
    LocalDate later = inSeason.plusYears(1);
    StringBuilder csv = new StringBuilder("model,size,lot,manufactured_on,certified_until,place\n");
    for (String size : SIZES) {
      for (int i = 0; i < 20; i++) {
        LocalDate until = i < 4 ? beforeBack : i < 12 ? midSeason : later;
        String made = inSeason.getYear() - 2 - i % 3 + "-05-15";
        String place = i % 4 == 0 ? "NORTH" : "DEPOT";
        csv.append(String.join(",", model, size, "L-" + model, made, until.toString(), place))
            .append('\n');
      }
    }
    importing("helmets", "all-or-none", csv.toString()).statusCode(200);
  }

  private void forecastNeedsOfEachSize(int high) {
    ObjectNode data = EventContracts.load().exampleOf(FORECAST).deepCopy();
    ObjectNode one = (ObjectNode) data.at("/sizes/0");
    data.put("model", model);
    ArrayNode sizes = data.putArray("sizes");
    for (String size : SIZES) {
      sizes.add(one.deepCopy().put("size", size).put("low", 6).put("high", high));
    }
    UUID id = UUID.randomUUID();
    Envelope told =
        new Envelope("sizing.events", FORECAST, "forecast-" + model, 1, model, id, id, id, data);
    try (TestKafka sizing = new TestKafka(kafka)) {
      sizing.publish(told).publish(told);
    }
  }

  private JsonPath planOnceKnown() {
    return await()
        .atMost(Duration.ofSeconds(20))
        .until(
            this::plan,
            p -> p.getList(inAll() + ".findAll { it.need != null }").size() == SIZES.size());
  }

  private JsonPath plan() {
    return as("depot")
        .queryParam("on", inSeason.toString())
        .queryParam("by", inSeason.plusMonths(3).toString())
        .get("/api/reconditioning/plan")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath();
  }

  private String inAll() {
    return "shelves.findAll { it.kind.model == '" + model + "' && it.place == null }";
  }

  private void assertThatEnoughStays(JsonPath plan) {
    List<Map<String, Integer>> shelves = plan.getList(inAll());
    for (Map<String, Integer> shelf : shelves) {
      int stays = shelf.get("usable") - shelf.get("goes");
      assertThat(shelf.get("usable")).isEqualTo(16);
      assertThat(stays).isGreaterThanOrEqualTo(shelf.get("need"));
      assertThat(shelf.get("goes")).isPositive();
    }
  }

  private List<String> going(JsonPath plan, String place) {
    return plan.getList(
        "steps.findAll { it.way == 'GOES' && it.standing.helmet.model == '"
            + model
            + "' && it.standing.helmet.place == '"
            + place
            + "' }.standing.helmet.tag");
  }

  private String begin(List<String> tags) {
    return begin(tags, "DEPOT");
  }

  private String begin(List<String> tags, String place) {
    return beginWith(UUID.randomUUID(), tags, place).statusCode(200).extract().path("batch");
  }

  private static ValidatableResponse beginWith(UUID id, List<String> tags, String place) {
    return as("depot")
        .header("Idempotency-Key", id)
        .contentType("application/json")
        .body(Map.of("place", place, "reconditioner", "recon-1", "tags", tags))
        .post("/api/reconditioning/batches")
        .then();
  }

  private static void pack(String batch, List<String> tags) {
    does(batch, "pack", Map.of("tags", tags)).body("packed", equalTo(tags.size()));
  }

  private static void receive(String batch, String outcome, List<String> tags) {
    String until = LocalDate.now().plusYears(2).toString();
    does(
        batch,
        "receive",
        Map.of("outcome", outcome, "certifiedUntil", until, "cost", "45.50", "tags", tags));
  }

  private static ValidatableResponse does(String batch, String step, Map<String, ?> body) {
    return commandOf("depot")
        .contentType("application/json")
        .body(body)
        .post("/api/reconditioning/batches/" + batch + "/" + step)
        .then()
        .statusCode(200);
  }

  private static ValidatableResponse form(String batch, String step, String name, String value) {
    return as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam(name, value)
        .post("/reconditioning/" + batch + "/" + step)
        .then();
  }
}
