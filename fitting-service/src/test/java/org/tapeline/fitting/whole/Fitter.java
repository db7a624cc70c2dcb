package org.tapeline.fitting.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What somebody does at a field, over HTTP. */
final class Fitter {
  static final Duration PATIENCE = Duration.ofSeconds(20);

  private final String user;
  private final String field;

  Fitter(String user, String field) {
    this.user = user;
    this.field = field;
  }

  static RequestSpecification as(String user) {
    return given().auth().preemptive().basic(user, "larkfield");
  }

  static Response post(String user, String path, Object body) {
    return as(user)
        .header("Idempotency-Key", UUID.randomUUID())
        .contentType("application/json")
        .body(body)
        .post(path);
  }

  /** Done, with that status. */
  private Response done(int status, String path, Object body) {
    Response answer = post(user, path, body);
    assertThat(answer.statusCode()).as(path + answer.asString()).isEqualTo(status);
    return answer;
  }

  UUID opens(UUID player) {
    Response opened = done(201, "/api/sessions", Map.of("player", player, "field", field));
    return UUID.fromString(opened.jsonPath().getString("session"));
  }

  Response triesOn(UUID session, String tag) {
    return post(
        user,
        "/api/sessions/" + session + "/helmet",
        Map.of("tag", tag, "sizeLabel", "youth-medium"));
  }

  /**
   * The player's state on the sideline list.
   *
   * @param what of it, such as {@code code} or {@code reason}
   */
  static String state(Person person, String what) {
    return as("manager")
        .queryParam("team", person.team())
        .get("/api/sideline")
        .jsonPath()
        .getString("players.find { it.number == '" + person.number() + "' }.state." + what);
  }

  /** Opens a session and puts the helmet on as soon as it is known here. */
  UUID opensWith(UUID player, String tag) {
    UUID session = opens(player);
    await().atMost(PATIENCE).until(() -> triesOn(session, tag).statusCode() == 200);
    return session;
  }

  void findsLoose(UUID session) {
    done(
        200,
        "/api/sessions/" + session + "/checks",
        Map.of("check", "snug", "result", "fail", "finding", "loose"));
  }

  void addsAir(UUID session) {
    done(
        200,
        "/api/sessions/" + session + "/adjustments",
        Map.of("check", "snug", "remedy", "add-air"));
  }

  void passes(UUID session) {
    List<String> checks = as(user).get("/api/protocol").jsonPath().getList("checks.id");
    for (String check : checks) {
      done(200, "/api/sessions/" + session + "/checks", Map.of("check", check, "result", "pass"));
    }
    done(200, "/api/sessions/" + session + "/pass", Map.of("airCelsius", 24, "hair", "usual"));
  }

  UUID fits(UUID player, String tag) {
    UUID session = opensWith(player, tag);
    passes(session);
    return session;
  }

  UUID fails(UUID player, String tag) {
    UUID session = opensWith(player, tag);
    findsLoose(session);
    done(200, "/api/sessions/" + session + "/fail", Map.of());
    return session;
  }

  void pauses(UUID session) {
    done(200, "/api/sessions/" + session + "/pause", Map.of());
  }

  void resumes(UUID session) {
    done(200, "/api/sessions/" + session + "/resume", Map.of());
  }

  void passesOverAir(UUID session) {
    done(
        200,
        "/api/sessions/" + session + "/passed-over",
        Map.of("check", "snug", "remedy", "add-air", "why", "not-possible"));
  }

  void takesBackTheAnswer(UUID session) {
    done(
        200,
        "/api/sessions/" + session + "/corrections",
        Map.of("check", "snug", "why", "wrong-button"));
  }

  void takesBackThePass(UUID session) {
    done(200, "/api/sessions/" + session + "/take-back", Map.of("why", "wrong-player"));
  }

  /** Something that is taken. */
  Response says(String path, Map<String, ?> body) {
    Response answer = post(user, path, body);
    assertThat(answer.statusCode()).as(path + answer.asString()).isBetween(200, 201);
    return answer;
  }

  void abandons(UUID session) {
    done(200, "/api/sessions/" + session + "/abandon", Map.of("why", "weather"));
  }

  /** A day with one fitter and fits of 15 minutes. */
  UUID announces(String date, String opens, String closes) {
    return announces(date, opens, closes, 1);
  }

  UUID announces(String date, String opens, String closes, int fitters) {
    Response announced =
        done(
            201,
            "/api/fit-days",
            Map.of(
                "field", field,
                "date", date,
                "opens", opens,
                "closes", closes,
                "fitters", fitters,
                "minutesPerFit", 15));
    return UUID.fromString(announced.jsonPath().getString("fitDay"));
  }

  Response tries(UUID fitDay, String date, String opens, String closes, int fitters) {
    return as(user)
        .header("Idempotency-Key", UUID.randomUUID())
        .contentType("application/json")
        .body(
            Map.of(
                "field", field, "date", date, "opens", opens, "closes", closes, "fitters", fitters))
        .put("/api/fit-days/" + fitDay);
  }

  /** To this fitter's field, with one fitter. */
  void moves(UUID fitDay, String date, String opens, String closes) {
    Response moved = tries(fitDay, date, opens, closes, 1);
    assertThat(moved.statusCode()).as(moved.asString()).isEqualTo(204);
  }

  void cancels(UUID fitDay) {
    as(user)
        .header("Idempotency-Key", UUID.randomUUID())
        .delete("/api/fit-days/" + fitDay)
        .then()
        .statusCode(204);
  }
}
