package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.util.Optional;
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
@DisplayName("A helmet that was worn when a concussion was suspected")
class SetAsideTest {
  private static final Duration LONG = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @BeforeEach
  void places() {
    Depot.places();
  }

  private static void is(String tag, String state) {
    await().atMost(LONG).untilAsserted(() -> assertThat(stateOf(tag)).isEqualTo(state));
  }

  @Test
  @DisplayName("is out of use until it was inspected, and its record says no more than that")
  void setAside() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    UUID player = UUID.randomUUID();
    try (Fitting fitting = new Fitting(bootstrap)) {
      fitting.signsOff(player, tag, "NORTH");
      is(tag, "issued");
      fitting.suspectsConcussion(player, Optional.of(tag));
      is(tag, "quarantined");
      JsonNode said = fitting.hears("helmet-quarantined", "tag", tag);
      assertThat(said.get("why").asText()).isEqualTo("inspection");
      assertThat(said.get("player").asText()).isEqualTo(player.toString());
      String page = Depot.as("manager").get("/helmets/" + tag).asString();
      assertThat(page).contains("Taken out of use: Inspection");
    }
  }

  @Test
  @DisplayName("is out of use also when the sign-off in it is heard of afterwards")
  void signOffAfterwards() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    UUID player = UUID.randomUUID();
    try (Fitting fitting = new Fitting(bootstrap)) {
      fitting.suspectsConcussion(player, Optional.of(tag));
      is(tag, "quarantined");
      fitting.signsOff(player, tag, "NORTH");
      assertThat(fitting.hears("issue-refused", "tag", tag).get("why").asText())
          .isEqualTo("quarantined");
      assertThat(stateOf(tag)).isEqualTo("quarantined");
    }
  }

  @Test
  @DisplayName("holds nothing up when it is not known or not named")
  void unknown() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    try (Fitting fitting = new Fitting(bootstrap)) {
      fitting.suspectsConcussion(UUID.randomUUID(), Optional.empty());
      fitting.suspectsConcussion(UUID.randomUUID(), Optional.of("LV260003Y"));
      fitting.suspectsConcussion(UUID.randomUUID(), Optional.of(tag));
      is(tag, "quarantined");
    }
  }
}
