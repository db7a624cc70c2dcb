package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.measure;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The pages for a correction, without script,")
class CorrectionPagesTest {

  @Test
  @DisplayName("list the last heads newest first: a fitter's own, the manager's those of all")
  void list() {
    String older = measured("fitter.north", "574", "575");
    String newer = measured("fitter.north", "534", "535");
    String managers = measured("manager", "540", "541");
    String mine = list("fitter.north");
    assertThat(mine).contains(older, newer).doesNotContain(managers);
    assertThat(mine.indexOf(newer)).isLessThan(mine.indexOf(older));
    assertThat(list("manager")).contains(older, newer, managers);
    as("coach.hawks").get("/corrections").then().statusCode(403);
  }

  @Test
  @DisplayName("ask for the reason and a third reading in place, then show both values and why")
  void corrected() {
    String number = measured("fitter.north", "574", "575");
    as("fitter.north")
        .get("/corrections/" + number + "/2")
        .then()
        .statusCode(200)
        .body(containsString("574 mm · 575 mm"), containsString("First reading"));
    UUID form = UUID.randomUUID();
    typed(number, form, "", "534", "541", "")
        .statusCode(422)
        .body(containsString("id=\"why-error\""))
        .body(containsString("value=\"534\""), containsString("value=\"541\""));
    typed(number, form, "misread", "534", "541", "")
        .statusCode(422)
        .body(containsString("7 mm apart"), containsString("Third reading"))
        .body(containsString("<option value=\"misread\" selected>"));
    String list =
        typed(number, form, "misread", "534", "541", "536")
            .statusCode(303)
            .extract()
            .header("Location");
    assertThat(list).isEqualTo("/sizing/corrections?corrected=yes");
    for (String page : new String[] {"/corrections?corrected=yes", "/players/" + number}) {
      as("fitter.north")
          .get(page)
          .then()
          .statusCode(200)
          .body(allOf(containsString("536 mm"), containsString("575 mm: misread")));
    }
  }

  @Test
  @DisplayName("withdraw another player's head, and still show it crossed out with the reason")
  void withdrawn() {
    String number = measured("fitter.north", "574", "575");
    UUID form = UUID.randomUUID();
    typed(number, form, "wrong-player", "534", "", "")
        .statusCode(422)
        .body(containsString("id=\"first-error\""), containsString("value=\"534\""));
    typed(number, form, "wrong-player", "", "", "").statusCode(303);
    as("fitter.north")
        .get("/players/" + number)
        .then()
        .statusCode(200)
        .body(containsString("No measurement of this player is left"))
        .body(containsString("<s>574 mm · 575 mm</s>"))
        .body(containsString("withdrawn: another player&#39;s head; by fitter.north"));
    assertThat(list("fitter.north")).doesNotContain(number);
    as("fitter.north").get("/corrections/" + number + "/2").then().statusCode(404);
    typed(number, form, "wrong-player", "", "", "").statusCode(303);
  }

  @Test
  @DisplayName("say why a head of another measurer is not corrected")
  void notYours() {
    String number = measured("manager", "574", "575");
    typed(number, UUID.randomUUID(), "misread", "534", "535", "")
        .statusCode(422)
        .body(containsString("You can correct your own last 20 measurements"));
    as("fitter.south").get("/corrections/" + number + "/2").then().statusCode(403);
    as("manager").get("/players/" + number).then().body(not(containsString("534 mm · 535 mm")));
  }

  private static String measured(String user, String... readings) {
    String number = enrolledAt("NORTH");
    measure(user, number, readings).statusCode(200);
    return number;
  }

  private static String list(String user) {
    return as(user).get("/corrections").then().statusCode(200).extract().asString();
  }

  private static ValidatableResponse typed(
      String number, UUID form, String why, String first, String second, String third) {
    return as("fitter.north")
        .redirects()
        .follow(false)
        .formParam("commandId", form)
        .formParam("why", why)
        .formParam("first", first)
        .formParam("second", second)
        .formParam("third", third)
        .formParam("hair", "usual")
        .post("/corrections/" + number + "/2")
        .then();
  }
}
