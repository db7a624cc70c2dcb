package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.tapeline.sizing.whole.Association.CHARTS;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.freshNumber;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.player;
import static org.tapeline.sizing.whole.Association.players;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The pages, without script,")
class PagesTest {

  @Test
  @DisplayName("say nothing of a measurement that was not, whatever the address says")
  void notMeasured() {
    UUID player = idOf(enrolledAt("NORTH"));
    as("fitter.north")
        .get("/players/" + player + "?measured=yes")
        .then()
        .statusCode(200)
        .body(not(containsString("Recorded:")));
  }

  @Test
  @DisplayName("lead from the list to the measuring page, over a third reading, to the advice")
  void measuring() {
    importing("charts", "all-or-none", CHARTS).statusCode(200);
    String number = enrolledAt("NORTH");
    as("fitter.north")
        .get("/players?q=" + number.toLowerCase())
        .then()
        .statusCode(200)
        .body(containsString("Ada Quillfeather"), containsString("not measured"));
    as("fitter.north")
        .queryParam("q", number)
        .get("/api/players")
        .then()
        .statusCode(200)
        .body("number", contains(number));
    as("fitter.north")
        .get("/players/" + number + "/measure")
        .then()
        .statusCode(200)
        .body(containsString("First reading"), not(containsString("Third reading")));
    UUID form = UUID.randomUUID();
    typed(number, form, "530", "537", "")
        .statusCode(422)
        .body(containsString("Third reading"), containsString("7 mm apart"))
        .body(containsString("value=\"530\""), containsString("value=\"537\""));
    String player =
        typed(number, form, "530", "537", "532").statusCode(303).extract().header("Location");
    assertThat(player).isEqualTo("/sizing/players/" + idOf(number) + "?measured=yes");
    as("fitter.north")
        .basePath("")
        .get(player)
        .then()
        .statusCode(200)
        .body(containsString("Recorded"), containsString("532 mm"))
        .body(containsString("Youth medium"), containsString("530 mm · 537 mm · 532 mm"));
    typed(number, form, "530", "537", "532")
        .statusCode(303)
        .header("Location", endsWith("?measured=yes"));
  }

  @Test
  @DisplayName("say back what is typed, or why it is no reading")
  void saidBack() {
    as("fitter.north")
        .queryParam("second", "58,1 cm")
        .get("/readings/said")
        .then()
        .statusCode(200)
        .body(containsString("22 7/8 in, 581 mm"));
    as("fitter.north")
        .queryParam("first", "30")
        .get("/readings/said")
        .then()
        .body(containsString("field-error"), containsString("Without a unit"));
    as("fitter.north").queryParam("first", "").get("/readings/said").then().statusCode(200);
    as("fitter.north").get("/measure.js").then().statusCode(200);
  }

  @Test
  @DisplayName("keep what was typed and put the reason beside the field")
  void errors() {
    String number = enrolledAt("NORTH");
    typed(number, UUID.randomUUID(), "big <b>", "21 in", "")
        .statusCode(422)
        .body(containsString("id=\"first-error\""), not(containsString("id=\"second-error\"")))
        .body(containsString("value=\"big &lt;b&gt;\""), containsString("value=\"21 in\""));
    typed(number, UUID.randomUUID(), "", "21 in", "")
        .statusCode(422)
        .body(containsString("id=\"first-error\""), containsString("value=\"21 in\""));
  }

  @Test
  @DisplayName("ask for a confirmation of a smaller head, and take it")
  void confirmation() {
    String number = enrolledAt("NORTH");
    typed(number, UUID.randomUUID(), "540", "541", "").statusCode(303);
    UUID form = UUID.randomUUID();
    typed(number, form, "530", "531", "")
        .statusCode(422)
        .body(containsString("name=\"confirmed\""));
    as("fitter.north")
        .redirects()
        .follow(false)
        .formParam("commandId", form)
        .formParam("first", "530")
        .formParam("second", "531")
        .formParam("confirmed", "yes")
        .post("/players/" + number + "/measure")
        .then()
        .statusCode(303);
  }

  @Test
  @DisplayName("show only players of own fields, with their teams")
  void ownFields() {
    String north = enrolledAt("NORTH");
    as("fitter.south").get("/players?q=" + north).then().body(not(containsString("Quillfeather")));
    as("fitter.south").get("/players/" + north).then().statusCode(403);
    as("manager").get("/players?team=U10-HAWKS&q=" + north).then().body(containsString(north));
    as("manager").get("/players?team=NOBODY").then().body(containsString("No player is found"));
    as("coach.hawks").get("/players").then().statusCode(403);
  }

  @Test
  @DisplayName("import a file, and show each wrong value in its row")
  void upload() {
    file("players", players(player(freshNumber(), "NORTH").replace("2015-04-30", "soon")))
        .statusCode(200)
        .body(containsString("Nothing was imported"), containsString("birth_date"))
        .body(containsString("soon"), containsString("2014-05-31"));
    file("players", players(player(freshNumber(), "NORTH")))
        .statusCode(200)
        .body(containsString("1 taken"));
    file("charts", "model,size\nmodel-a,small\n").body(containsString("Missing: from, to, unit"));
    file("charts", CHARTS).statusCode(200);
    as("fitter.north").get("/import").then().statusCode(403);
  }

  private static ValidatableResponse typed(
      String number, UUID form, String first, String second, String third) {
    return as("fitter.north")
        .redirects()
        .follow(false)
        .formParam("commandId", form)
        .formParam("first", first)
        .formParam("second", second)
        .formParam("third", third)
        .post("/players/" + number + "/measure")
        .then();
  }

  private static ValidatableResponse file(String what, String csv) {
    return as("manager")
        .multiPart("commandId", UUID.randomUUID().toString())
        .multiPart("mode", "all-or-none")
        .multiPart("file", what + ".csv", csv.getBytes(StandardCharsets.UTF_8), "text/csv")
        .post("/import/" + what)
        .then();
  }
}
