package org.tapeline.fitting.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.time.Duration;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.testkit.PretendedRelays;
import org.tapeline.testkit.TestServers;

/** What a peer has recorded but not yet sent cannot be seen here: its silence must be. */
@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("While the relay of a peer stands still")
class LaggingPeerTest {
  private static final Duration LONG = Duration.ofSeconds(60);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private Peers peers;
  private Person person;
  private UUID session;

  @BeforeEach
  void aFittedPlayer() {
    peers = new Peers(kafka);
    person = peers.arrives("NORTH");
    session = new Fitter("fitter.north", "NORTH").fits(person.player(), person.tag());
    await().atMost(PATIENCE).until(() -> shown().equals("may-wear"));
  }

  @AfterEach
  void close() {
    PretendedRelays.silence();
    peers.close();
  }

  private JsonPath list() {
    return as("manager").queryParam("team", person.team()).get("/api/sideline").jsonPath();
  }

  private String shown() {
    return list().getString("players[0].state.code");
  }

  @ParameterizedTest(name = "that of {0}")
  @ValueSource(strings = {"inventory", "sizing"})
  @DisplayName(
      "nobody is shown as may wear and no paper holds, and since when; once it goes on all is known"
          + " again")
  void silent(String peer) {
    Paper paper = Paper.of(as("manager").get("/sign-offs/" + session + "/sheet.pdf").asByteArray());
    assertThat(given().get(paper.path()).asString()).contains("It holds.");
    PretendedRelays.silence(peer);
    await().atMost(LONG).until(() -> shown().equals("unknown"));
    assertThat(given().get(paper.path()).asString())
        .contains("Not known whether the sign-off holds", "Not known since")
        .doesNotContain("It holds.");
    assertThat(list().getString("players[0].state.reason")).startsWith("Not known since");

    PretendedRelays.silence();
    await().atMost(LONG).until(() -> shown().equals("may-wear"));
  }
}
