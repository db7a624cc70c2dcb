package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.commandOf;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The size mix of the roster")
class SizeMixTest {
  private static final String CHART =
      """
      model,size,from,to,unit
      model-mix,youth-small,480,530,mm
      model-mix,youth-medium,531,600,mm
      """;
  private static final String RECEIVED = "org.tapeline.inventory.helmet-received.v1";
  private static final String QUARANTINED = "org.tapeline.inventory.helmet-quarantined.v1";
  private final EventContracts contracts = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Test
  @DisplayName("counts known and unknown heads, is net of usable helmets, and is published")
  void reckoned() {
    importing("charts", "good-rows", CHART).statusCode(200);
    int before = known();
    for (int i = 0; i < 6; i++) {
      measure("fitter.north", enrolledAt("NORTH"), "560", "561").statusCode(200);
    }
    enrolledAt("NORTH");
    assertThat(known()).isEqualTo(before + 6);
    assertThat(mix().getInt("unknown")).isPositive();
    double medium = mix().getDouble("sizes[1].expected");
    assertThat(medium).isGreaterThan(5.9);
    int order = mix().getInt("sizes[1].order");
    assertThat(order).isGreaterThanOrEqualTo(6);

    try (TestKafka inventory = new TestKafka(kafka)) {
      String tag = "MIX1";
      inventory
          .publish(helmet(RECEIVED, "MIX0", 1))
          .publish(helmet(RECEIVED, tag, 1))
          .publish(helmet(QUARANTINED, tag, 2));
      await()
          .atMost(Duration.ofSeconds(20))
          .untilAsserted(
              () -> {
                assertThat(mix().getInt("sizes[1].usable")).isEqualTo(1);
                assertThat(mix().getInt("sizes[1].order")).isEqualTo(order - 1);
              });
      commandOf("manager")
          .contentType("application/json")
          .body(Map.of("tooFew", 100, "tooMany", 40))
          .post("/api/size-mix/model-mix/publish")
          .then()
          .statusCode(200);
      List<Message> said =
          inventory.await(
              "sizing.events",
              1,
              Duration.ofSeconds(20),
              m -> m.type().equals("org.tapeline.sizing.size-mix-forecast.v1"));
      contracts.validateProduced(said.getFirst().type(), said.getFirst().data());
      assertThat(said.getFirst().data().at("/sizes/1/usable").asInt()).isEqualTo(1);
    }
  }

  @Test
  @DisplayName("leaves out helmets on hold and counts them again when they are free, told twice")
  void onHold() {
    importing("charts", "good-rows", CHART).statusCode(200);
    int before = mix().getInt("sizes[0].usable");
    try (TestKafka inventory = new TestKafka(kafka)) {
      tells(inventory, small(helmet(RECEIVED, "MIX7", 1)), before + 1);
      tells(inventory, state(helmet(of("helmet-held"), "MIX7", 2), "held"), before);
      tells(inventory, state(helmet(of("helmet-freed"), "MIX7", 3), "held"), before);
      tells(inventory, state(helmet(of("helmet-freed"), "MIX7", 4), "available"), before + 1);
      tells(inventory, state(helmet(of("helmet-held"), "MIX7", 5), "at-reconditioner"), before);
      tells(inventory, state(helmet(of("helmet-came-back"), "MIX7", 6), "held"), before);
      tells(inventory, state(helmet(of("helmet-freed"), "MIX7", 7), "available"), before + 1);
    }
  }

  /** The event twice, and the helmets of the small size that are usable then. */
  private static void tells(TestKafka inventory, Envelope event, int usable) {
    inventory.publish(event).publish(event);
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertThat(mix().getInt("sizes[0].usable")).isEqualTo(usable));
  }

  @Test
  @DisplayName("is a page and a spreadsheet; a day that has passed is refused with what to do")
  void pages() {
    importing("charts", "good-rows", CHART).statusCode(200);
    as("manager").get("/size-mix").then().statusCode(200).body(containsString("Money at risk"));
    as("manager")
        .get("/api/size-mix/csv")
        .then()
        .statusCode(200)
        .contentType("text/csv")
        .body(startsWith("model,size,day,expected,low_5,high_95,usable,order,money_at_risk"));
    as("manager")
        .get("/api/size-mix?day=2020-01-01")
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo("day"));
    as("manager")
        .get("/size-mix?day=2020-01-01")
        .then()
        .statusCode(400)
        .body(containsString("Choose a day from today"));
    as("fitter.north").get("/size-mix").then().statusCode(403);
  }

  private static int known() {
    return mix().getInt("known");
  }

  private static JsonPath mix() {
    JsonPath all = as("manager").get("/api/size-mix").then().statusCode(200).extract().jsonPath();
    return all.setRootPath("find { it.model == 'model-mix' }");
  }

  private static String of(String event) {
    return "org.tapeline.inventory." + event + ".v1";
  }

  private static Envelope small(Envelope received) {
    ((ObjectNode) received.data()).put("size", "youth-small");
    return received;
  }

  private static Envelope state(Envelope event, String state) {
    ((ObjectNode) event.data()).put("state", state);
    return event;
  }

  private Envelope helmet(String type, String tag, int version) {
    ObjectNode data = contracts.exampleOf(type).deepCopy();
    data.put("tag", tag);
    if (type.equals(RECEIVED)) {
      data.put("model", "model-mix");
      data.put("size", "youth-medium");
    }
    UUID id = UuidV7.next();
    return new Envelope("inventory.events", type, "helmet-" + tag, version, tag, id, id, id, data);
  }
}
