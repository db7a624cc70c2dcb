package org.tapeline.sizing.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.commandOf;
import static org.tapeline.sizing.whole.Association.freshNumber;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.player;
import static org.tapeline.sizing.whole.Association.players;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.whole.Broker.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("An import of players")
class ImportTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private Broker broker;

  @BeforeEach
  void open() {
    broker = new Broker(kafka);
  }

  @AfterEach
  void close() {
    broker.close();
  }

  @Test
  @DisplayName("puts people on the people topic, and an enrolment without a name on the events")
  void people() {
    String number = freshNumber();
    importing("players", "all-or-none", players(player(number, "NORTH")))
        .statusCode(200)
        .body("accepted", equalTo(1), "unchanged", equalTo(0), "rejected", equalTo(0));
    UUID player = idOf(number);

    await().atMost(SOON).until(() -> broker.ofKey("sizing.events", player).size() == 1);
    Message enrolled = broker.ofKey("sizing.events", player).getFirst();
    assertThat(enrolled.is("player-enrolled")).isTrue();
    assertThat(enrolled.stream()).isEqualTo("player-" + player);
    assertThat(enrolled.data().toString()).contains(number, "U10-HAWKS").doesNotContain("Quill");

    await().atMost(SOON).until(() -> !broker.ofKey("people", player).isEmpty());
    JsonNode details = broker.ofKey("people", player).getLast().data();
    assertThat(details.path("familyName").asText()).isEqualTo("Quillfeather");
    String guardian = details.path("guardians").path(0).asText();
    await().atMost(SOON).until(() -> !broker.ofKey("people", guardian).isEmpty());
    JsonNode parent = broker.ofKey("people", guardian).getLast().data();
    assertThat(parent.path("phone").asText()).isEqualTo("+15005550101");
    assertThat(parent.path("language").asText()).isEqualTo("es");
    assertThat(parent.path("players").path(0).asText()).isEqualTo(player.toString());
  }

  @Test
  @DisplayName("keeps letters of every language, and quotes")
  void letters() {
    String number = freshNumber();
    String row = player(number, "NORTH").replace("Ada,Quillfeather", "\"Zoë \"\"Zo\"\"\",Muñoz");
    importing("players", "all-or-none", players(row)).statusCode(200);
    as("manager").get("/api/players/" + number).then().body("name", equalTo("Zoë \"Zo\" Muñoz"));
    commandOf("manager")
        .contentType("text/csv")
        .body(players(row).getBytes(StandardCharsets.ISO_8859_1))
        .post("/api/import/players")
        .then()
        .statusCode(400)
        .body("detail", containsString("UTF-8"));
  }

  @Test
  @DisplayName("of the same file again changes nothing, also for a guardian without an address")
  void again() {
    String number = freshNumber();
    String other = freshNumber();
    String csv =
        players(
            player(number, "NORTH"),
            other + ",Bo,Example,2014-05-31,,U10-HAWKS,NORTH,Cy Example,,,en,,,,");
    importing("players", "all-or-none", csv).statusCode(200).body("accepted", equalTo(2));
    UUID player = idOf(other);
    await().atMost(SOON).until(() -> broker.ofKey("people", player).size() == 1);

    importing("players", "all-or-none", csv)
        .statusCode(200)
        .body("accepted", equalTo(0), "unchanged", equalTo(2));
    importing("players", "all-or-none", players(player(freshNumber(), "NORTH"))).statusCode(200);
    assertThat(broker.ofKey("sizing.events", player)).hasSize(1);
    assertThat(broker.ofKey("people", player)).hasSize(1);
  }

  @Test
  @DisplayName("with a guardian's new telephone number counts as a change")
  void guardianChanged() {
    String number = freshNumber();
    String row = player(number, "NORTH");
    importing("players", "all-or-none", players(row)).statusCode(200);
    importing("players", "all-or-none", players(row.replace("0101", "0109")))
        .statusCode(200)
        .body("accepted", equalTo(1), "unchanged", equalTo(0));
  }

  @Test
  @DisplayName("with another team or field moves the player")
  void moved() {
    String number = freshNumber();
    importing("players", "all-or-none", players(player(number, "NORTH"))).statusCode(200);
    importing("players", "all-or-none", players(player(number, "SOUTH")))
        .statusCode(200)
        .body("accepted", equalTo(1));
    UUID player = idOf(number);
    await().atMost(SOON).until(() -> broker.ofKey("sizing.events", player).size() == 2);
    Message moved = broker.ofKey("sizing.events", player).getLast();
    assertThat(moved.is("player-moved")).isTrue();
    assertThat(moved.data().path("field").asText()).isEqualTo("SOUTH");
    await().atMost(SOON).until(() -> fieldOnPeople(player).equals("SOUTH"));
  }

  @Test
  @DisplayName("with wrong rows takes none and says what is wrong in each")
  void allOrNone() {
    String good = freshNumber();
    String bad = player(freshNumber(), "NORTH").replace("2015-04-30", "30/04/2015");
    importing("players", "all-or-none", players(player(good, "NORTH"), bad))
        .statusCode(422)
        .contentType("application/problem+json")
        .body("type", equalTo("https://tapeline.org/problems/import-refused"))
        .body("errors", hasSize(1))
        .body("errors[0].row", equalTo(3))
        .body("errors[0].column", equalTo("birth_date"))
        .body("errors[0].value", equalTo("30/04/2015"))
        .body("errors[0].message", containsString("2014-05-31"));
    as("manager").get("/api/players/" + good).then().statusCode(404);
  }

  @Test
  @DisplayName("takes the good rows where that was chosen, and says what is wrong in the others")
  void goodRows() {
    String good = freshNumber();
    String twice = freshNumber();
    importing(
            "players",
            "good-rows",
            players(
                player(good, "NORTH"),
                player(twice, "NORTH"),
                player(twice, "SOUTH"),
                player(freshNumber(), "NORTH").replaceFirst("LV-", "lv ")))
        .statusCode(200)
        .body("accepted", equalTo(2), "rejected", equalTo(2))
        .body("errors.row", equalTo(List.of(4, 5)));
    as("manager").get("/api/players/" + good).then().statusCode(200);
  }

  @Test
  @DisplayName("needs a command id, a known mode, the columns, and the equipment manager")
  void refusals() {
    String csv = players(player(freshNumber(), "NORTH"));
    as("manager")
        .contentType("text/csv")
        .body(csv)
        .post("/api/import/players")
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("detail", containsString("Idempotency-Key"));
    importing("players", "some-rows", csv).statusCode(400);
    importing("players", "good-rows", "player_number\nLV-1\n")
        .statusCode(400)
        .body("detail", containsString("birth_date"));
    commandOf("fitter.north")
        .contentType("text/csv")
        .body(csv)
        .post("/api/import/players")
        .then()
        .statusCode(403)
        .contentType("application/problem+json");
    given().get("/api/players").then().statusCode(401).contentType("application/problem+json");
    given().redirects().follow(false).get("/players").then().statusCode(302);
  }

  private String fieldOnPeople(UUID player) {
    return broker.ofKey("people", player).getLast().data().path("field").asText();
  }
}
