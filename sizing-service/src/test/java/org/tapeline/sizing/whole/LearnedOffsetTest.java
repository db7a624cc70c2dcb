package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The sizes that really pass")
class LearnedOffsetTest {
  private static final String PASSED = "org.tapeline.fitting.fit-passed.v1";
  private static final String CHART =
      """
      model,size,from,to,unit
      model-learned,youth-small,490,520,mm
      model-learned,youth-medium,521,552,mm
      model-learned,youth-large,553,585,mm
      """;
  private final EventContracts contracts = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Test
  @DisplayName("teach how a chart is to be read: who was on the edge is advised anew, and told why")
  void learned() {
    importing("charts", "good-rows", CHART).statusCode(200);
    String onTheEdge = enrolledAt("NORTH");
    measure("fitter.north", onTheEdge, "548", "548").statusCode(200);
    assertThat(advised(onTheEdge)).isEqualTo("youth-medium");
    try (TestKafka fitting = new TestKafka(kafka)) {
      for (int i = 0; i < 25; i++) {
        String number = enrolledAt("NORTH");
        measure("fitter.north", number, "547", "547").statusCode(200);
        fitting.publish(passed(idOf(number), "youth-large"));
      }
    }
    await()
        .atMost(Duration.ofSeconds(30))
        .untilAsserted(() -> assertThat(advised(onTheEdge)).isEqualTo("youth-large"));
    as("fitter.north")
        .get("/players/" + onTheEdge)
        .then()
        .body(containsString("passed fits in this model have shown"));
    as("fitter.north").get("/charts").then().body(containsString("25 passed fits: heads count +"));
    assertThat(as("manager").get("/api/parked").jsonPath().getList("$")).isEmpty();
  }

  private static String advised(String number) {
    return as("manager")
        .get("/api/players/" + number)
        .jsonPath()
        .getString("advice.find { it.model == 'model-learned' }.size");
  }

  private Envelope passed(UUID player, String size) {
    ObjectNode data = contracts.exampleOf(PASSED).deepCopy();
    UUID session = UuidV7.next();
    data.put("session", session.toString());
    data.put("player", player.toString());
    data.put("model", "model-learned");
    data.put("size", size);
    data.put("at", Instant.now().toString());
    contracts.validateProduced(PASSED, data);
    UUID id = UuidV7.next();
    return new Envelope(
        "fitting.events", PASSED, "session-" + session, 1, player.toString(), id, id, id, data);
  }
}
