package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Instant;
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
@DisplayName("What the service does for the field app")
class FieldAppTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
  private Peers peers;
  private Person person;

  @BeforeEach
  void anAdvisedPlayerAndAHelmet() {
    peers = new Peers(kafka);
    person = peers.arrives("NORTH");
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private static Response pack() {
    return as("fitter.north").get("/api/field-pack");
  }

  private static RequestSpecification entry(UUID command) {
    return as("fitter.north")
        .header("Idempotency-Key", command)
        .header("Entered-By", "fitter.north")
        .contentType("application/json");
  }

  private static String code(Response refused) {
    return refused.jsonPath().getString("type").replaceAll(".*/", "");
  }

  @Test
  @DisplayName("the pack has the own players, the helmets and the open sessions with their events")
  void pack_has() {
    UUID session = fitter.opensWith(person.player(), person.tag());
    JsonPath pack = pack().jsonPath();
    String own = "players.find { it.player == '" + person.player() + "' }";
    assertThat(pack.getString(own + ".team")).isEqualTo(person.team());
    assertThat(pack.getString(own + ".name")).matches("\\S+ \\S\\.");
    assertThat(pack.getString("helmets.find { it.tag == '" + person.tag() + "' }.state"))
        .isEqualTo("available");
    String open = "sessions.find { it.session == '" + session + "' }";
    assertThat(pack.getList(open + ".events.type"))
        .containsExactly("session-opened", "helmet-tried");
    assertThat(pack.getString("fitter")).isEqualTo("fitter.north");
    assertThat(pack.getList("protocol.checks")).isNotEmpty();
  }

  @Test
  @DisplayName("the pack says nothing about a person beyond what a fitter calls the player by")
  void minimal() {
    assertThat(pack().asString().toLowerCase())
        .doesNotContain("birth", "guardian", "email", "phone\"", "familyname");
  }

  @Test
  @DisplayName("a pack that has not changed is not sent again, and is fresh all the same")
  void unchanged() {
    Response first = pack();
    Response again =
        as("fitter.north").header("If-None-Match", first.header("ETag")).get("/api/field-pack");
    if (again.statusCode() == 304) {
      assertThat(Instant.parse(again.header("As-Of")))
          .isAfterOrEqualTo(Instant.parse(first.header("As-Of")));
    } else {
      assertThat(again.header("ETag")).isNotEqualTo(first.header("ETag"));
    }
  }

  @Test
  @DisplayName("the pack of others' fields is refused, and one for nobody is told to sign in")
  void others() {
    assertThat(as("fitter.south").get("/api/field-pack?field=NORTH").statusCode()).isEqualTo(403);
    assertThat(io.restassured.RestAssured.get("/api/field-pack").statusCode()).isEqualTo(401);
  }

  @Test
  @DisplayName("what one fitter entered is not taken under another's name")
  void otherName() {
    Response refused =
        as("fitter.north")
            .header("Idempotency-Key", UUID.randomUUID())
            .header("Entered-By", "fitter.south")
            .contentType("application/json")
            .body(Map.of("player", person.player(), "field", "NORTH"))
            .post("/api/sessions");
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(code(refused)).isEqualTo("entered-by-other");
  }

  @Test
  @DisplayName("an entry for a session that was gone on with elsewhere is refused, a repeat is not")
  void goneOnElsewhere() {
    UUID session = fitter.opensWith(person.player(), person.tag());
    UUID command = UUID.randomUUID();
    Map<String, Object> loose = Map.of("check", "snug", "result", "fail", "finding", "loose");
    String path = "/api/sessions/" + session + "/checks";
    for (int i = 0; i < 2; i++) {
      assertThat(entry(command).header("Events-Known", 2).body(loose).post(path).statusCode())
          .isEqualTo(200);
    }
    Response late = entry(UUID.randomUUID()).header("Events-Known", 2).body(loose).post(path);
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(code(late)).isEqualTo("session-changed");
  }

  private Map<String, Object> aside(Map<String, String> said) {
    UUID refused = UUID.randomUUID();
    return Map.of(
        "session",
        UUID.randomUUID(),
        "player",
        person.player(),
        "field",
        "NORTH",
        "refused",
        refused,
        "code",
        "helmet-not-free",
        "sentence",
        "This helmet is in quarantine. Put it aside and take another one.",
        "entries",
        List.of(
            Map.of(
                "command",
                refused,
                "kind",
                "helmet",
                "enteredAt",
                "2026-08-01T10:00:00Z",
                "said",
                said)));
  }

  @Test
  @DisplayName("what could not be recorded stands on the player's page until it was seen")
  void setAside() {
    UUID id = UUID.randomUUID();
    Map<String, Object> body = aside(Map.of("tag", person.tag()));
    for (int i = 0; i < 2; i++) {
      assertThat(entry(id).body(body).post("/api/set-aside").statusCode()).isEqualTo(201);
    }
    String ofPlayer = "/set-aside/of/" + person.player();
    assertThat(as("fitter.north").get(ofPlayer).asString())
        .containsOnlyOnce("Entered on a phone, not recorded")
        .contains("in quarantine", person.tag());
    assertThat(as("fitter.south").get(ofPlayer).asString()).doesNotContain(person.tag());
    assertThat(as("manager").get("/set-aside").asString()).contains(id.toString());
    as("fitter.north").redirects().follow(false).post("/set-aside/" + id + "/seen");
    assertThat(as("fitter.north").get(ofPlayer).asString()).doesNotContain(person.tag());
  }

  @Test
  @DisplayName("free text is not kept with it")
  void codesOnly() {
    Response refused =
        entry(UUID.randomUUID())
            .body(aside(Map.of("note", "Tell his mother")))
            .post("/api/set-aside");
    assertThat(refused.statusCode()).isEqualTo(400);
  }

  @Test
  @DisplayName("the app's files are for everybody and kept by nobody but the app itself")
  void shell() {
    Response worker = io.restassured.RestAssured.get("/field/service-worker.js");
    assertThat(worker.statusCode()).isEqualTo(200);
    assertThat(worker.contentType()).startsWith("text/javascript");
    assertThat(worker.header("Cache-Control")).startsWith("no-");
    Response page = io.restassured.RestAssured.get("/field/");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.header("Cache-Control")).isEqualTo("no-cache");
  }
}
