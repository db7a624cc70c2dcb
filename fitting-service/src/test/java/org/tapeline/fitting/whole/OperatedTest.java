package org.tapeline.fitting.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.PretendedRelays;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Whoever runs the service")
class OperatedTest {
  private static final Duration LONG = Duration.ofSeconds(60);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject DataSource dataSource;

  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    PretendedRelays.silence();
    peers.close();
  }

  private static Response health(String which) {
    return given().get("/q/health/" + which);
  }

  private static void answersWith(int status) {
    await().atMost(LONG).until(() -> health("group/answers").statusCode() == status);
  }

  private static double metric(String line) {
    return given()
        .get("/q/metrics")
        .asString()
        .lines()
        .filter(l -> l.startsWith(line + " "))
        .mapToDouble(l -> Double.parseDouble(l.substring(line.length() + 1)))
        .findFirst()
        .orElse(Double.NaN);
  }

  @Test
  @DisplayName(
      "hears that sign-off questions cannot be answered while a peer lags, and that work can be"
          + " entered all the same")
  void notReadyToAnswer() {
    Person person = peers.arrives("NORTH");
    answersWith(200);
    PretendedRelays.silence("inventory");
    answersWith(503);
    assertThat(health("group/answers").asString())
        .contains("\"sign-off answers\"", "notKnownSince", "\"sent everything up to, inventory\"");
    assertThat(health("ready").statusCode()).isEqualTo(200);
    assertThat(health("live").statusCode()).isEqualTo(200);
    assertThat(health("well").statusCode()).isEqualTo(503);
    new Fitter("fitter.north", "NORTH").opens(person.player());
    assertThat(metric("tapeline_players{service=\"fitting\",state=\"unknown\"}")).isPositive();
    assertThat(metric("tapeline_players{service=\"fitting\",state=\"may-wear\"}")).isZero();

    PretendedRelays.silence();
    answersWith(200);
    await()
        .atMost(PATIENCE)
        .until(() -> metric("tapeline_players{service=\"fitting\",state=\"unknown\"}") == 0);
  }

  @Test
  @DisplayName("sees commands by kind and answer: done, done before, refused")
  void commands() {
    Person person = peers.arrives("NORTH");
    String kind = "command=\"open-session\",service=\"fitting\"";
    String done = "tapeline_commands_seconds_count{answer=\"done\"," + kind + "}";
    String repeated = "tapeline_commands_seconds_count{answer=\"repeated\"," + kind + "}";
    String refused = "tapeline_commands_seconds_count{answer=\"refused\"," + kind + "}";
    UUID id = UUID.randomUUID();
    opens(person.player(), "NORTH", id, 201);
    double doneOnce = metric(done);
    opens(person.player(), "NORTH", id, 201);
    assertThat(metric(done)).isEqualTo(doneOnce).isPositive();
    assertThat(metric(repeated)).isPositive();
    opens(person.player(), "RIVER", id, 409);
    assertThat(metric(refused)).isPositive();
    assertThat(
            metric(
                "tapeline_journal_appended_events_total{event=\"session-opened\","
                    + "service=\"fitting\"}"))
        .isPositive();
  }

  private static void opens(UUID player, String field, UUID id, int status) {
    as("fitter.north")
        .header("Idempotency-Key", id)
        .contentType("application/json")
        .body(Map.of("player", player, "field", field))
        .post("/api/sessions")
        .then()
        .statusCode(status);
  }

  @Test
  @DisplayName("sees waiting cases by age, and an event that nobody understands as parked")
  void figures() {
    Person person = peers.arrives("NORTH");
    new Fitter("fitter.north", "NORTH").fails(person.player(), person.tag());
    String young = "tapeline_refit_cases_open{age=\"under 1 day\",service=\"fitting\"}";
    String parked = "tapeline_inbox_parked_records{service=\"fitting\"}";
    await().atMost(PATIENCE).until(() -> metric(young) >= 1);
    assertThat(metric("tapeline_inbox_lag_records{service=\"fitting\",topic=\"people\"}")).isZero();

    double before = metric(parked);
    peers.send(peers.unheardOf());
    await().atMost(PATIENCE).until(() -> metric(parked) == before + 1);
    assertThat(health("well").asString()).contains("\"parked inventory.events\"");
    assertThat(health("ready").statusCode()).isEqualTo(200);
  }

  @Test
  @DisplayName("does not read in the log what stands in a row that the database refused")
  void refusedRow() throws SQLException {
    try (Connection connection = dataSource.getConnection();
        PreparedStatement insert =
            connection.prepareStatement(
                "insert into player (player, given_name, on_roster) values (null, ?, true)")) {
      insert.setString(1, "Ada Quillfeather");
      assertThatThrownBy(insert::executeUpdate)
          .hasMessageContaining("null value")
          .hasMessageNotContaining("Quillfeather");
    }
  }
}
