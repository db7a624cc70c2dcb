package org.tapeline.sizing.whole;

import static io.restassured.RestAssured.given;

import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/** Requests as the people of the association send them. */
final class Association {
  static final String CHARTS =
      """
      model,size,from,to,unit
      model-a,youth-small,495,520,mm
      model-a,youth-medium,520.5,556,mm
      model-a,youth-large,559,590,mm
      """;

  private static final String HEADER =
      "player_number,given_name,family_name,birth_date,sex,team,field,guardian_name,"
          + "guardian_email,guardian_phone,guardian_language,guardian2_name,guardian2_email,"
          + "guardian2_phone,guardian2_language\n";
  private static final AtomicInteger NEXT = new AtomicInteger();

  private Association() {}

  static RequestSpecification as(String user) {
    return given().auth().preemptive().basic(user, "larkfield");
  }

  /** A command under a fresh id. */
  static RequestSpecification commandOf(String user) {
    return as(user).header("Idempotency-Key", UUID.randomUUID());
  }

  /** A roster number that no other test uses. */
  static String freshNumber() {
    return "LV-%04d".formatted(NEXT.incrementAndGet());
  }

  static String players(String... rows) {
    return HEADER + String.join("\n", rows) + "\n";
  }

  static String player(String number, String field) {
    return number
        + ",Ada,Quillfeather,2015-04-30,f,U10-HAWKS,"
        + field
        + ",Bea Quillfeather,bea."
        + number.toLowerCase()
        + "@example.org,(500) 555-0101,es,,,,";
  }

  static ValidatableResponse importing(String what, String mode, String csv) {
    return commandOf("manager")
        .contentType("text/csv")
        .queryParam("mode", mode)
        .body(csv.getBytes(StandardCharsets.UTF_8))
        .post("/api/import/" + what)
        .then();
  }

  /** Imports one player at the field and tells the roster number. */
  static String enrolledAt(String field) {
    String number = freshNumber();
    importing("players", "all-or-none", players(player(number, field))).statusCode(200);
    return number;
  }

  static UUID idOf(String number) {
    return UUID.fromString(
        as("manager")
            .get("/api/players/" + number)
            .then()
            .statusCode(200)
            .extract()
            .path("player"));
  }

  static ValidatableResponse measure(String user, String number, String... readings) {
    return commandOf(user)
        .contentType("application/json")
        .body(Map.of("readings", List.of(readings)))
        .post("/api/players/" + number + "/readings")
        .then();
  }
}
