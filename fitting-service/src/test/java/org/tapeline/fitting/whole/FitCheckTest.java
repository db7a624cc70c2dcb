package org.tapeline.fitting.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The fit check, with what follows by itself")
class FitCheckTest {
  private static final EventContracts CONTRACTS = EventContracts.load();
  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final AtomicInteger NEXT = new AtomicInteger();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private Peers peers;
  private final int number = NEXT.incrementAndGet();
  private final UUID player = UuidV7.next();
  private final String team = "TEAM-" + number;
  private final String tag = "LV%04d".formatted(number);

  @BeforeEach
  void anAdvisedPlayerAndAHelmet() {
    peers = new Peers(kafka);
    peers.send(
        peers.field("NORTH"),
        peers.chart(),
        peers.details(player, "LV-%04d".formatted(number), team, "NORTH"),
        peers.enrolled(player, "LV-%04d".formatted(number), team, "NORTH"),
        peers.advised(player),
        peers.received(tag, "NORTH"));
    await()
        .atMost(PATIENCE)
        .untilAsserted(
            () -> {
              Response answer = as("manager").get("/api/players/" + player);
              assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
              assertThat(answer.asString()).contains("youth-medium");
            });
  }

  @AfterEach
  void close() {
    peers.close();
  }

  static RequestSpecification as(String user) {
    return given().auth().preemptive().basic(user, "larkfield");
  }

  private static Response post(String user, String path, Object body) {
    return as(user)
        .header("Idempotency-Key", UUID.randomUUID())
        .contentType("application/json")
        .body(body)
        .post(path);
  }

  private UUID openSession() {
    Response opened =
        post("fitter.north", "/api/sessions", Map.of("player", player, "field", "NORTH"));
    assertThat(opened.statusCode()).as(opened.asString()).isEqualTo(201);
    assertThat(opened.jsonPath().getString("advised[0].size")).isEqualTo("youth-medium");
    return UUID.fromString(opened.jsonPath().getString("session"));
  }

  private UUID sessionWithHelmet() {
    UUID session = openSession();
    await()
        .atMost(PATIENCE)
        .until(
            () ->
                post(
                            "fitter.north",
                            "/api/sessions/" + session + "/helmet",
                            Map.of("tag", tag, "sizeLabel", "youth-medium"))
                        .statusCode()
                    == 200);
    return session;
  }

  private UUID fittedPlayer() {
    UUID session = sessionWithHelmet();
    List<String> checks = as("fitter.north").get("/api/protocol").jsonPath().getList("checks.id");
    for (String check : checks) {
      post(
              "fitter.north",
              "/api/sessions/" + session + "/checks",
              Map.of("check", check, "result", "pass"))
          .then()
          .statusCode(200);
    }
    Response passed =
        post(
            "fitter.north",
            "/api/sessions/" + session + "/pass",
            Map.of("airCelsius", 24, "hair", "usual"));
    assertThat(passed.statusCode()).as(passed.asString()).isEqualTo(200);
    return session;
  }

  private String shown() {
    return line().getString("players[0].state.code");
  }

  private JsonPath line() {
    return as("manager").queryParam("team", team).get("/api/sideline").jsonPath();
  }

  private Message said(String event) {
    List<Message> found =
        peers.kafka.await(
            "fitting.events",
            1,
            PATIENCE,
            m ->
                m.type().equals("org.tapeline.fitting." + event + ".v1")
                    && m.key().equals(player.toString()));
    assertThat(found).as(event).isNotEmpty();
    found.forEach(m -> CONTRACTS.validateProduced(m.type(), m.data()));
    return found.getLast();
  }

  private void mayWear() {
    await().atMost(PATIENCE).until(() -> shown().equals("may-wear"));
  }

  @Test
  @DisplayName("a pass is signed off, said on Kafka and shown as may wear")
  void pass() {
    UUID session = fittedPlayer();
    assertThat(said("fit-passed").data().get("session").asText()).isEqualTo(session.toString());
    assertThat(said("signed-off").data().get("tag").asText()).isEqualTo(tag);
    mayWear();
    assertThat(line().getString("players[0].tag")).isEqualTo(tag);
  }

  @Test
  @DisplayName("a fail withdraws the sign-off and opens a case with the next smaller helmet")
  void fail() {
    fittedPlayer();
    UUID session = sessionWithHelmet();
    post(
            "fitter.north",
            "/api/sessions/" + session + "/checks",
            Map.of("check", "snug", "result", "fail", "finding", "loose"))
        .then()
        .statusCode(200);
    post("fitter.north", "/api/sessions/" + session + "/fail", Map.of()).then().statusCode(200);
    assertThat(said("sign-off-withdrawn").data().get("why").asText()).isEqualTo("fit-failed");
    assertThat(said("refit-opened").data().at("/needs/0/size").asText()).isEqualTo("youth-small");
    assertThat(shown()).isEqualTo("do-not-wear");
  }

  @Test
  @DisplayName(
      "a helmet in quarantine ends the sign-off, opens a case, and the replacement books it")
  void quarantineThenBooking() {
    UUID session = fittedPlayer();
    peers.send(peers.issued(tag, player, session), peers.quarantined(tag, player));
    Message opened = said("refit-opened");
    assertThat(said("sign-off-withdrawn").data().get("why").asText()).isEqualTo("damage");
    String refitCase = opened.data().get("refitCase").asText();
    Instant ready = Instant.now();
    peers.send(
        peers.event(
            "inventory.events",
            "replacement-reserved",
            "reservation-" + refitCase,
            player,
            Map.of(
                "refitCase",
                refitCase,
                "player",
                player,
                "need",
                Map.of("kind", "helmet", "model", "model-a", "size", "youth-medium"),
                "tag",
                tag + "X",
                "fromPlace",
                "NORTH",
                "toPlace",
                "NORTH",
                "readyAt",
                ready,
                "expiresAt",
                ready.plusSeconds(86_400))));
    post(
            "fitter.north",
            "/api/fit-days",
            Map.of(
                "field", "NORTH",
                "date", LocalDate.now().plusDays(2).toString(),
                "opens", "17:30",
                "closes", "20:00",
                "fitters", 2))
        .then()
        .statusCode(201);
    assertThat(said("refit-booked").data().get("refitCase").asText()).isEqualTo(refitCase);
    assertThat(shown()).isEqualTo("do-not-wear");
  }

  @Test
  @DisplayName("a refused issue ends the sign-off of that session")
  void issueRefused() {
    UUID session = fittedPlayer();
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
    assertThat(said("sign-off-withdrawn").data().get("why").asText()).isEqualTo("issue-refused");
    assertThat(said("refit-opened").data().get("why").asText()).isEqualTo("issue-refused");
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
    UUID session = sessionWithHelmet();
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
