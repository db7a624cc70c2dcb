package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.today.WhenTimeGoesByThenTellDue;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

/**
 * The clock is not turned: two fields are 26 hours apart, so that whatever time it is, a day that
 * lasts still in the west is over in the east.
 */
@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The certification of a helmet that is worn ends")
class CertificationEndsTest {
  private static final String ENDED = "The certification of the helmet has ended";

  /** An hour from now, so that noon UTC may pass while the test runs. */
  private final LocalDate day =
      ZonedDateTime.now(ZoneOffset.ofHours(-12)).plusHours(1).toLocalDate();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject WhenTimeGoesByThenTellDue time;

  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private Person fitted(String field, String zone) {
    Person ada = peers.arrives(field);
    UUID session = new Fitter("manager", field).fits(ada.player(), ada.tag());
    peers.send(peers.field(field, zone), peers.issued(ada.tag(), ada.player(), session));
    state(ada, "may-wear");
    return ada;
  }

  private static JsonPath stateOf(Person person) {
    return as("manager").get("/api/players/" + person.player()).jsonPath();
  }

  private static void state(Person person, String code) {
    await()
        .atMost(PATIENCE)
        .untilAsserted(() -> assertThat(stateOf(person).getString("state.code")).isEqualTo(code));
  }

  private List<Message> lapses(Person person) {
    return peers.kafka.await(
        "fitting.events",
        Integer.MAX_VALUE,
        Duration.ofSeconds(2),
        m ->
            m.type().equals("org.tapeline.fitting.sign-off-lapsed.v1")
                && m.key().equals(person.player().toString()));
  }

  @Test
  @DisplayName("at midnight at the player's field, told once; the next pass counts when it is new")
  void midnight() {
    Person west = fitted("FAR-WEST", "Etc/GMT+12");
    Person east = fitted("FAR-EAST", "Etc/GMT-14");
    Envelope eastUntil = peers.recertified(east.tag(), day);
    peers.send(peers.recertified(west.tag(), day), eastUntil, eastUntil);
    state(east, "do-not-wear");
    assertThat(stateOf(east).getString("state.reason")).isEqualTo(ENDED);
    time.lookAtAll();
    time.lookAtAll();
    assertThat(peers.hears("sign-off-lapsed", east.player()).data().get("why").asText())
        .isEqualTo("out-of-certification");
    assertThat(lapses(east)).hasSize(1);
    assertThat(lapses(west)).isEmpty();
    state(west, "may-wear");

    // The record of its issue says NORTH.
    peers.send(
        peers.recertified(east.tag(), day.plusYears(1)), peers.brought(east.tag(), "FAR-EAST"));
    new Fitter("manager", "FAR-EAST").fits(east.player(), east.tag());
    state(east, "may-wear");
  }
}
