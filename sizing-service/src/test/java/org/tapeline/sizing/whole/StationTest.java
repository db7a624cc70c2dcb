package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.freshNumber;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;
import static org.tapeline.sizing.whole.Association.player;
import static org.tapeline.sizing.whole.Association.players;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The measuring station")
class StationTest {
  private static final Pattern TURN = Pattern.compile("<h1 class=\"turn\">Ada ([A-Za-z]+)</h1>");
  private static final Pattern SKIP =
      Pattern.compile("<a class=\"button skip\" href=\"/sizing([^\"]+)\">");

  @Inject DataSource database;

  @Test
  @DisplayName("asks for who was never measured first, then for the oldest measurement")
  void order() throws SQLException {
    String team = "U10-OWLS";
    String recent = enrolled(team, "Ash");
    String old = enrolled(team, "Birch");
    enrolled(team, "Cedar");
    measuredDaysAgo(recent, 40);
    measuredDaysAgo(old, 400);
    String page = station("?team=" + team);
    assertThat(turn(page)).isEqualTo("Cedar");
    assertThat(page).contains("3 left", "never measured");
    page = station(skip(page));
    assertThat(turn(page)).isEqualTo("Birch");
    assertThat(page).contains("2 left, 1 not here", "last time 21 1/16 in, 535 mm");
    page = station(skip(page));
    assertThat(turn(page)).isEqualTo("Ash");
  }

  @Test
  @DisplayName("leads from a recorded head to the next player, and names who is done")
  void next() {
    String team = "U10-KITES";
    String first = enrolled(team, "Ash");
    String second = enrolled(team, "Birch");
    assertThat(turn(station("?team=" + team))).isEqualTo("Ash");
    String page = follow(record(first, UUID.randomUUID(), team, "", "534", "535", ""));
    assertThat(turn(page)).isEqualTo("Birch");
    assertThat(page)
        .contains("1 left", "Ada Ash", "21 1/16 in, 535 mm")
        .contains("/sizing/corrections/" + idOf(first) + "/2");
    page = follow(record(second, UUID.randomUUID(), team, "", "534", "535", ""));
    assertThat(page).contains("Nobody is left", "was measured within the last day");
  }

  @Test
  @DisplayName("keeps who was not here for the end, and asks for them again")
  void notHere() {
    String team = "U10-LARKS";
    String first = enrolled(team, "Ash");
    String second = enrolled(team, "Birch");
    String page = station(skip(station("?team=" + team)));
    assertThat(turn(page)).isEqualTo("Birch");
    page = follow(record(second, UUID.randomUUID(), team, first, "534", "535", ""));
    assertThat(page).contains("Nobody is left", "1 was not here", "Ask for them again");
    assertThat(turn(station("?team=" + team))).isEqualTo("Ash");
  }

  @Test
  @DisplayName("asks for a third reading in place and keeps all that was typed")
  void third() {
    String team = "U10-TERNS";
    String number = enrolled(team, "Ash");
    enrolled(team, "Birch");
    UUID form = UUID.randomUUID();
    String page = refused(record(number, form, team, "LV-9999", "530", "537", ""));
    assertThat(turn(page)).isEqualTo("Ash");
    assertThat(page)
        .contains("7 mm apart", "id=\"third\"", "value=\"530\"", "value=\"537\"")
        .contains("name=\"skip\" value=\"LV-9999\"", "name=\"team\" value=\"" + team + "\"");
    page = follow(record(number, form, team, "LV-9999", "530", "537", "532"));
    assertThat(turn(page)).isEqualTo("Birch");
    assertThat(page).contains("532 mm");
  }

  @Test
  @DisplayName("asks in place whether a doubtful value is right, and marks what is no reading")
  void doubtful() {
    String team = "U10-WRENS";
    String number = enrolled(team, "Ash");
    UUID form = UUID.randomUUID();
    String page = refused(record(number, form, team, "", "640", "641", ""));
    assertThat(turn(page)).isEqualTo("Ash");
    assertThat(page).contains("name=\"confirmed\"", "value=\"640\"", "999 of 1000");
    page = refused(record(number, form, team, "", "big", "535", ""));
    assertThat(page).contains("id=\"first-error\"", "value=\"big\"", "value=\"535\"");
    as("manager").get("/api/players/" + number).then().body("head", nullValue());
  }

  @Test
  @DisplayName("records once when a form is sent twice")
  void twice() {
    String team = "U10-SWIFTS";
    String number = enrolled(team, "Ash");
    UUID form = UUID.randomUUID();
    follow(record(number, form, team, "", "534", "535", ""));
    follow(record(number, form, team, "", "534", "535", ""));
    // The second event of the player, after the enrolment; a second head would be a later one.
    as("manager").get("/api/players/" + number).then().body("head.version", equalTo(2));
  }

  @Test
  @DisplayName("has players of own fields only, and is linked from the list of players")
  void ownFields() {
    String team = "U10-DOVES";
    String number = enrolled(team, "Ash");
    as("fitter.south")
        .get("/station?team=" + team)
        .then()
        .statusCode(200)
        .body(containsString("Nobody is left"), not(containsString("Ada Ash")));
    as("fitter.south")
        .formParam("commandId", UUID.randomUUID())
        .post("/station/" + number)
        .then()
        .statusCode(403);
    as("coach.hawks").get("/station").then().statusCode(403);
    as("fitter.north")
        .get("/players?team=" + team)
        .then()
        .body(containsString("/sizing/station?team=" + team));
  }

  private static String enrolled(String team, String familyName) {
    String number = freshNumber();
    String row = player(number, "NORTH").replace("U10-HAWKS", team);
    String named = row.replace("Ada,Quillfeather", "Ada," + familyName);
    importing("players", "all-or-none", players(named)).statusCode(200);
    return number;
  }

  private void measuredDaysAgo(String number, int days) throws SQLException {
    measure("fitter.north", number, "534", "535").statusCode(200);
    try (Connection connection = database.getConnection();
        PreparedStatement statement =
            connection.prepareStatement(
                "update head set measured_at = measured_at - ? * interval '1 day'"
                    + " where player = ?")) {
      statement.setInt(1, days);
      statement.setObject(2, idOf(number));
      assertThat(statement.executeUpdate()).isEqualTo(1);
    }
  }

  private static String station(String query) {
    String path = query.startsWith("/") ? query : "/station" + query;
    return as("fitter.north")
        .urlEncodingEnabled(false)
        .get(path)
        .then()
        .statusCode(200)
        .extract()
        .asString();
  }

  private static String turn(String page) {
    return found(TURN, page);
  }

  private static String skip(String page) {
    return found(SKIP, page).replace("&amp;", "&");
  }

  private static String found(Pattern pattern, String page) {
    Matcher matcher = pattern.matcher(page);
    assertThat(matcher.find()).as(page).isTrue();
    return matcher.group(1);
  }

  private static ValidatableResponse record(
      String number,
      UUID form,
      String team,
      String skip,
      String first,
      String second,
      String third) {
    return as("fitter.north")
        .redirects()
        .follow(false)
        .formParam("commandId", form)
        .formParam("team", team)
        .formParam("skip", skip)
        .formParam("first", first)
        .formParam("second", second)
        .formParam("third", third)
        .formParam("hair", "usual")
        .post("/station/" + number)
        .then();
  }

  private static String follow(ValidatableResponse recorded) {
    String next = recorded.statusCode(303).extract().header("Location");
    return station(next.replaceFirst("^/sizing", ""));
  }

  private static String refused(ValidatableResponse recorded) {
    return recorded.statusCode(422).extract().asString();
  }
}
