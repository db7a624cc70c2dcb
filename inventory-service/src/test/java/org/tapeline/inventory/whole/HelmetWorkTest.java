package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.importing;
import static org.tapeline.inventory.whole.Depot.stateOf;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("People who work with helmets")
class HelmetWorkTest {
  private static final String HEADER = "tag,model,size,lot,manufactured_on,certified_until,place\n";

  @BeforeEach
  void places() {
    Depot.places();
  }

  @Test
  @DisplayName("import the same file twice and nothing changes")
  void sameFile() {
    String rows = ",model-i,youth-small,I-1,2025-01-01,,NORTH\n".repeat(2);
    importing("helmets", "all-or-none", HEADER + rows).body("accepted", equalTo(2));
    importing("helmets", "all-or-none", HEADER + rows)
        .body("accepted", equalTo(0))
        .body("unchanged", equalTo(2));
    String parts = "place,item,model,quantity\nSOUTH,valve,,7\n";
    importing("parts", "all-or-none", parts).body("accepted", equalTo(1));
    importing("parts", "all-or-none", parts).body("unchanged", equalTo(1));
  }

  @Test
  @DisplayName("are told every wrong value by row, column and what to do")
  void wrongRows() {
    String csv = HEADER + "LV2600012,model-a,youth-small,A-1,01/02/2025,,NOWHERE\n";
    importing("helmets", "all-or-none", csv)
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.find { it.column == 'tag' }.row", equalTo(2))
        .body("errors.find { it.column == 'tag' }.message", containsString("check character"))
        .body("errors.find { it.column == 'place' }.message", containsString("No such place"))
        .body("errors.find { it.column == 'manufactured_on' }.value", equalTo("01/02/2025"));
  }

  @Test
  @DisplayName("cannot give a helmet days that nobody means, which a peer could not keep")
  void farDays() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    for (String day : List.of("-999999999-01-01", "+999999999-12-31", "0001-01-01", "9999-12-31")) {
      commandOf("manager")
          .contentType("application/json")
          .body(Map.of("certifiedUntil", day))
          .post("/api/helmets/" + tag + "/certification")
          .then()
          .statusCode(400)
          .body("errors[0].field", equalTo("certifiedUntil"));
      importing("helmets", "all-or-none", HEADER + ",model-i,youth-small,I-1," + day + ",,NORTH\n")
          .statusCode(422)
          .body("errors[0].column", equalTo("manufactured_on"));
    }
  }

  @Test
  @DisplayName("keep the good rows when they say so")
  void goodRows() {
    String good = ",model-g,youth-small,G-1,2025-01-01,,NORTH\n";
    importing("helmets", "good-rows", HEADER + good + ",,youth-small,A-1,2025-01-01,,NORTH\n")
        .statusCode(200)
        .body("accepted", equalTo(1))
        .body("rejected", equalTo(1));
  }

  @Test
  @DisplayName("report a crack, and the helmet is out of use; a scratch, and it is not")
  void severity() {
    String cracked = helmet(freshModel(), "youth-small", "NORTH");
    damage("fitter.north", cracked, "shell", "crack").body("severity", equalTo("structural"));
    assertThat(stateOf(cracked)).isEqualTo("quarantined");
    String scratched = helmet(freshModel(), "youth-small", "NORTH");
    damage("fitter.north", scratched, "shell", "scratch").body("severity", equalTo("cosmetic"));
    assertThat(stateOf(scratched)).isEqualTo("available");
    damage("fitter.north", scratched, "roof", "scratch")
        .statusCode(400)
        .body("errors[0].field", equalTo("where"));
  }

  @Test
  @DisplayName("send a command twice and it is done once")
  void twice() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    UUID id = UUID.randomUUID();
    for (int i = 0; i < 2; i++) {
      as("manager")
          .header("Idempotency-Key", id)
          .contentType("application/json")
          .body("{\"where\":\"shell\",\"what\":\"crack\"}")
          .post("/api/helmets/" + tag + "/damage")
          .then()
          .statusCode(200)
          .header("Correlation-Id", id.toString())
          .body("report", equalTo(id.toString()));
    }
    as("manager")
        .header("Idempotency-Key", id)
        .contentType("application/json")
        .body("{\"where\":\"liner\",\"what\":\"torn\"}")
        .post("/api/helmets/" + tag + "/damage")
        .then()
        .statusCode(409);
    as("manager")
        .contentType("application/json")
        .body("{}")
        .post("/api/helmets/" + tag + "/move")
        .then()
        .statusCode(400);
  }

  @Test
  @DisplayName("inspect what is out of use, and it is back in stock or retired")
  void inspection() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    inspect(tag, "back-to-stock").statusCode(409);
    damage("manager", tag, "shell", "dent").statusCode(200);
    inspect(tag, "back-to-stock").statusCode(200).body("state", equalTo("available"));
    damage("manager", tag, "shell", "dent").statusCode(200);
    inspect(tag, "retire").statusCode(200).body("state", equalTo("retired"));
  }

  private static ValidatableResponse inspect(String tag, String outcome) {
    return commandOf("depot")
        .contentType("application/json")
        .body("{\"outcome\":\"" + outcome + "\"}")
        .post("/api/helmets/" + tag + "/inspection")
        .then();
  }

  @Test
  @DisplayName("see and do what their roles allow")
  void roles() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    as("fitter.north").get("/api/helmets/" + tag).then().statusCode(200);
    as("fitter.south").get("/api/helmets/" + tag).then().statusCode(403);
    damage("fitter.south", tag, "shell", "crack").statusCode(403);
    as("fitter.south").get("/api/helmets").then().body("tag", not(List.of(tag)));
    as("coach.hawks").get("/api/helmets").then().statusCode(403);
    as("fitter.north").get("/api/restock").then().statusCode(403);
    commandOf("depot")
        .contentType("text/csv")
        .body("x")
        .post("/api/import/places")
        .then()
        .statusCode(403);
    as("depot").get("/api/helmets/NOSUCH").then().statusCode(404);
  }

  @Test
  @DisplayName("see every page, and report damage by form")
  void pages() {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    String path = "/helmets/" + tag;
    as("fitter.north").get("/helmets").then().statusCode(200).body(containsString("Youth small"));
    as("fitter.north").get(path + "/damage").then().statusCode(200);
    as("fitter.north")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("where", "hardware")
        .formParam("what", "loose")
        .post(path + "/damage")
        .then()
        .statusCode(303)
        .header("Location", startsWith("/inventory" + path + "/damage/"));
    as("depot")
        .get(path)
        .then()
        .statusCode(200)
        .body(containsString("Taken out of use"))
        .body(containsString("Back to stock"));
    as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("outcome", "back-to-stock")
        .formParam("findings", "surface-only")
        .post(path + "/inspection")
        .then()
        .statusCode(303);
    as("depot").get("/stock").then().statusCode(200).body(containsString("Stock of parts"));
    as("depot").get("/restock").then().statusCode(200).body(containsString("Restock"));
    as("manager").get("/import").then().statusCode(200).body(containsString("Places"));
    as("manager")
        .multiPart("commandId", UUID.randomUUID().toString())
        .multiPart("mode", "all-or-none")
        .multiPart("file", "parts.csv", "place,item,quantity\nNOWHERE,valve,1\n".getBytes())
        .post("/import/parts")
        .then()
        .statusCode(200)
        .body(containsString("No such place"));
  }
}
