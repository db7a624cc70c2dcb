package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.sizing.whole.Association.CHARTS;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A head that has grown old")
class RemeasureTest {
  private static final String DUE = "org.tapeline.sizing.remeasure-due.v1";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Months months;

  @Test
  @DisplayName("is asked for again once, and stands first on the list")
  void due() {
    importing("charts", "good-rows", CHARTS).statusCode(200);
    String number = enrolledAt("NORTH");
    UUID player = idOf(number);
    measure("fitter.north", number, "535", "535").statusCode(200);
    as("fitter.north")
        .get("/due/" + player)
        .then()
        .statusCode(200)
        .body(containsString("of 1000 of the age"), containsString("Measure again on"));
    months.pass(player, 14);
    try (TestKafka peer = new TestKafka(kafka)) {
      List<Message> asked =
          peer.await("sizing.events", 1, Duration.ofSeconds(30), m -> isDue(m, player));
      assertThat(asked).hasSize(1);
      EventContracts.load().validateProduced(DUE, asked.getFirst().data());
      assertThat(asked.getFirst().data().get("why").asText()).isEqualTo("old");
      // Another head comes later: had this one been asked for twice, that would stand before it.
      String later = enrolledAt("NORTH");
      measure("fitter.north", later, "535", "535").statusCode(200);
      months.pass(idOf(later), 14);
      peer.await("sizing.events", 1, Duration.ofSeconds(30), m -> isDue(m, idOf(later)));
      assertThat(peer.await("sizing.events", 2, Duration.ofSeconds(2), m -> isDue(m, player)))
          .hasSize(1);
    }
    await()
        .atMost(Duration.ofSeconds(10))
        .untilAsserted(
            () ->
                as("fitter.north")
                    .get("/due")
                    .then()
                    .statusCode(200)
                    .body(containsString("Due</span>"), containsString(number)));
  }

  private static boolean isDue(Message m, UUID player) {
    return m.type().equals(DUE) && m.data().get("player").asText().equals(player.toString());
  }
}
