package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;
import static org.tapeline.fitting.whole.Fitter.post;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("The fit check, with what follows by itself")
class FitCheckTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
  private Peers peers;
  private UUID player;
  private String team;
  private String tag;

  @BeforeEach
  void anAdvisedPlayerAndAHelmet() {
    peers = new Peers(kafka);
    Person person = peers.arrives("NORTH");
    player = person.player();
    team = person.team();
    tag = person.tag();
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private String shown() {
    return line().getString("players[0].state.code");
  }

  private JsonPath line() {
    return as("manager").queryParam("team", team).get("/api/sideline").jsonPath();
  }

  private JsonNode said(String event) {
    return peers.hears(event, player).data();
  }

  private void mayWear() {
    await().atMost(PATIENCE).until(() -> shown().equals("may-wear"));
  }

  @Test
  @DisplayName("a pass is signed off, said on Kafka and shown as may wear")
  void pass() {
    UUID session = fitter.fits(player, tag);
    assertThat(said("fit-passed").get("session").asText()).isEqualTo(session.toString());
    assertThat(said("signed-off").get("tag").asText()).isEqualTo(tag);
    mayWear();
    assertThat(line().getString("players[0].tag")).isEqualTo(tag);
  }

  @Test
  @DisplayName("a fail withdraws the sign-off and opens a case with the next smaller helmet")
  void fail() {
    fitter.fits(player, tag);
    fitter.fails(player, tag);
    assertThat(said("sign-off-withdrawn").get("why").asText()).isEqualTo("fit-failed");
    assertThat(said("refit-opened").at("/needs/0/size").asText()).isEqualTo("youth-small");
    assertThat(shown()).isEqualTo("do-not-wear");
  }

  @Test
  @DisplayName(
      "a helmet in quarantine ends the sign-off, opens a case, and the replacement books it")
  void quarantineThenBooking() {
    UUID session = fitter.fits(player, tag);
    peers.send(peers.issued(tag, player, session), peers.quarantined(tag, player));
    UUID refitCase = peers.refitOf(player);
    assertThat(said("sign-off-withdrawn").get("why").asText()).isEqualTo("damage");
    peers.send(peers.reserved(refitCase, player, tag + "X", "youth-medium"));
    fitter.announces(LocalDate.now().plusDays(2).toString(), "17:30", "20:00");
    assertThat(said("refit-booked").get("refitCase").asText()).isEqualTo(refitCase.toString());
    assertThat(shown()).isEqualTo("do-not-wear");
  }

  @Test
  @DisplayName("a refused issue ends the sign-off of that session")
  void issueRefused() {
    UUID session = fitter.fits(player, tag);
    peers.send(
        peers.helmet(
            tag,
            "issue-refused",
            Map.of(
                "tag", tag,
                "player", player,
                "session", session,
                "why", "quarantined",
                "at", Instant.now())));
    assertThat(said("sign-off-withdrawn").get("why").asText()).isEqualTo("issue-refused");
    assertThat(said("refit-opened").get("why").asText()).isEqualTo("issue-refused");
  }

  @Test
  @DisplayName("the same command sent twice is done once and answered the same")
  void twice() {
    UUID id = UUID.randomUUID();
    Map<String, Object> body = Map.of("player", player, "field", "NORTH");
    RequestSpecification request =
        as("fitter.north").header("Idempotency-Key", id).contentType("application/json").body(body);
    String first = request.post("/api/sessions").asString();
    assertThat(request.post("/api/sessions").asString()).isEqualTo(first);
  }

  @Test
  @DisplayName("a fitter of another field is refused")
  void otherField() {
    post("fitter.south", "/api/sessions", Map.of("player", player, "field", "NORTH"))
        .then()
        .statusCode(403);
    as("fitter.south").get("/api/players/" + player).then().statusCode(403);
  }

  @Test
  @DisplayName("every page of the fitter can be read")
  void pages() {
    UUID session = fitter.opensWith(player, tag);
    for (String page :
        List.of(
            "/players",
            "/players/" + player,
            "/players/" + player + "/state",
            "/sessions/" + session,
            "/sessions/" + session + "?step=helmet",
            "/sessions/" + session + "?step=fail",
            "/fit-days",
            "/protocol",
            "/sideline?team=" + team)) {
      Response answer = as("fitter.north").get(page);
      assertThat(answer.statusCode()).as(page + answer.asString()).isEqualTo(200);
      assertThat(answer.asString())
          .as(page)
          .contains("<h1>".substring(0, page.endsWith("/state") ? 1 : 4));
    }
  }
}
