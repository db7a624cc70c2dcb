package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.measure;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
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
@DisplayName("The size that really passed")
class PassedSizeTest {
  private static final String PASSED = "org.tapeline.fitting.fit-passed.v1";
  private static final Duration SOON = Duration.ofSeconds(20);
  private final EventContracts contracts = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Test
  @DisplayName("is kept and shown beside the advice; an older pass never replaces a newer one")
  void kept() {
    String number = enrolledAt("NORTH");
    UUID player = idOf(number);
    measure("fitter.north", number, "534", "535").statusCode(200);
    Envelope newer = passed(player, "youth-large", "2026-08-02T15:00:00Z");
    Envelope older = passed(player, "youth-small", "2026-08-01T15:00:00Z");
    Envelope other = passed(player, "youth-large", "2026-08-02T15:00:00Z");
    try (TestKafka peer = new TestKafka(kafka)) {
      peer.publish(newer).publish(newer).publish(older).publish(older).publish(other);
    }
    await()
        .atMost(SOON)
        .untilAsserted(
            () ->
                assertThat(
                        as("manager")
                            .get("/api/players/" + number)
                            .jsonPath()
                            .getString("passed.size"))
                    .isEqualTo("youth-large"));
    as("fitter.north")
        .get("/players/" + number)
        .then()
        .statusCode(200)
        .body(containsString("Youth large"));
    assertThat(as("manager").get("/api/parked").jsonPath().getList("$")).isEmpty();
  }

  /** A session of its own, with the contract's example as its content. */
  private Envelope passed(UUID player, String size, String at) {
    ObjectNode data = contracts.exampleOf(PASSED).deepCopy();
    UUID session = UuidV7.next();
    data.put("session", session.toString());
    data.put("player", player.toString());
    data.put("size", size);
    data.put("at", at);
    contracts.validateProduced(PASSED, data);
    UUID id = UuidV7.next();
    return new Envelope(
        "fitting.events", PASSED, "session-" + session, 1, player.toString(), id, id, id, data);
  }
}
