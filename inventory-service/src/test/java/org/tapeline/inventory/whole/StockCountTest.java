package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.importing;
import static org.tapeline.inventory.whole.Shelves.count;
import static org.tapeline.inventory.whole.Shelves.freshPart;
import static org.tapeline.inventory.whole.Shelves.move;
import static org.tapeline.inventory.whole.Shelves.opening;
import static org.tapeline.inventory.whole.Shelves.pieces;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The shelves")
class StockCountTest {
  private static final Duration LONG = Duration.ofSeconds(20);

  private final EventContracts contracts = EventContracts.load();
  private final String part = freshPart();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @BeforeEach
  void places() {
    Depot.places();
  }

  private static RequestSpecification form(String user, UUID id) {
    return as(user).redirects().follow(false).formParam("commandId", id);
  }

  @Test
  @DisplayName("are counted: the difference is booked with its reason, and told")
  void counted() {
    opening("SOUTH", part, 8);
    count("depot", "SOUTH", part, 6, 8, "lost").statusCode(200).body("differed", equalTo(1));
    assertThat(pieces("SOUTH", part)).isEqualTo(6);
    count("depot", "SOUTH", part, 6, 6, "").statusCode(200).body("differed", equalTo(0));
    try (Fitting fitting = new Fitting(bootstrap)) {
      JsonNode said = fitting.hears("stock-counted", "item", part, 3).get(1);
      assertThat(said.get("variance").asInt()).isEqualTo(-2);
      assertThat(said.get("reason").asText()).isEqualTo("lost");
      contracts.validateProduced("org.tapeline.inventory.stock-counted.v1", said);
    }
  }

  @Test
  @DisplayName("need a reason for each difference, and whole numbers")
  void refused() {
    opening("SOUTH", part, 8);
    count("depot", "SOUTH", part, 6, 8, "")
        .statusCode(400)
        .body("errors[0].field", equalTo("reason-0"));
    count("depot", "SOUTH", part, 6, 8, "magic").statusCode(400);
    count("depot", "SOUTH", part, -1, 8, "lost")
        .statusCode(400)
        .body("errors[0].field", equalTo("counted-0"));
    count("depot", "NOWHERE", part, 6, 8, "lost").statusCode(400);
    count("fitter.north", "SOUTH", part, 6, 8, "lost").statusCode(403);
    assertThat(pieces("SOUTH", part)).isEqualTo(8);
    count("fitter.south", "SOUTH", part, 7, 8, "lost").statusCode(200);
  }

  @Test
  @DisplayName("that two people count at once are booked for one, and the other is told")
  void twoAtOnce() {
    opening("SOUTH", part, 8);
    List<Integer> answers =
        IntStream.of(7, 6)
            .parallel()
            .mapToObj(n -> count("depot", "SOUTH", part, n, 8, "lost").extract().statusCode())
            .toList();
    assertThat(answers).containsExactlyInAnyOrder(200, 409);
    assertThat(pieces("SOUTH", part)).isBetween(6, 7);
  }

  @Test
  @DisplayName("whose books changed while they were counted are told so, and what was typed stays")
  void changedMeanwhile() {
    opening("SOUTH", part, 8);
    Response review = countForm(UUID.randomUUID(), "7", "8", "").post("/stock/count/review");
    review
        .then()
        .statusCode(200)
        .body(containsString("\u22121"), containsString("Nothing is booked"));
    move("SOUTH", "scrap", part, 1, "broken").statusCode(200);
    countForm(UUID.randomUUID(), "7", "8", "lost")
        .formParam("book-0", "8")
        .post("/stock/count")
        .then()
        .statusCode(409)
        .body(containsString("nothing you typed is lost"))
        .body(containsString("said 8 before and say 7 now"))
        .body(containsString("name=\"counted-0\" value=\"7\""));
    countForm(UUID.randomUUID(), "7", "8", "")
        .post("/stock/count/review")
        .then()
        .body(containsString("said 8 when the list was made and say 7 now"));
    assertThat(pieces("SOUTH", part)).isEqualTo(7);
  }

  private RequestSpecification countForm(UUID id, String counted, String seen, String reason) {
    return form("depot", id)
        .formParam("place", "SOUTH")
        .formParam("book", "hidden")
        .formParam("item-0", part)
        .formParam("model-0", "")
        .formParam("seen-0", seen)
        .formParam("counted-0", counted)
        .formParam("reason-0", reason);
  }

  @Test
  @DisplayName("are counted by form, blind or with the books beside it")
  void byForm() {
    opening("SOUTH", part, 8);
    as("depot").get("/stock/count").then().statusCode(200).body(containsString("South Common"));
    as("fitter.south").get("/stock/count").then().body(not(containsString("River Bend")));
    as("fitter.south").get("/stock/count?place=NORTH").then().statusCode(403);
    String blind = as("depot").get("/stock/count?place=SOUTH").asString();
    assertThat(blind).contains(part).doesNotContain("data-label=\"Books\"");
    assertThat(as("depot").get("/stock/count?place=SOUTH&book=shown").asString())
        .contains("data-label=\"Books\"");
    countForm(UUID.randomUUID(), "many", "8", "")
        .post("/stock/count/review")
        .then()
        .statusCode(400)
        .body(containsString("value=\"many\""), containsString("whole number from 0"));
    UUID id = UUID.randomUUID();
    for (int i = 0; i < 2; i++) {
      countForm(id, "9", "8", "found")
          .formParam("book-0", "8")
          .post("/stock/count")
          .then()
          .statusCode(303)
          .header("Location", containsString("differed=1"));
    }
    assertThat(pieces("SOUTH", part)).isEqualTo(9);
    countForm(UUID.randomUUID(), "5", "9", "")
        .post("/stock/count/again")
        .then()
        .body(containsString("value=\"5\""));
  }

  @Test
  @DisplayName("of which more was used than the books had stand among the counts to do")
  void negative() {
    try (Fitting fitting = new Fitting(bootstrap)) {
      fitting.passes(UUID.randomUUID(), "SOUTH", "model-a", part);
      await().atMost(LONG).untilAsserted(() -> assertThat(pieces("SOUTH", part)).isEqualTo(-1));
    }
    as("depot")
        .get("/stock?place=SOUTH")
        .then()
        .statusCode(200)
        .body(containsString("Counts to do"), containsString("More was used than the books had"));
    count("depot", "SOUTH", part, 0, -1, "not-booked");
    Response after = as("depot").get("/stock/ledger?place=SOUTH&item=" + part);
    after.then().statusCode(200);
    String model =
        "{\"place\":\"SOUTH\",\"lines\":[{\"item\":\""
            + part
            + "\",\"model\":\"model-a\","
            + "\"counted\":0,\"book\":-1,\"reason\":\"not-booked\"}]}";
    Depot.commandOf("depot")
        .contentType("application/json")
        .body(model)
        .post("/api/stock/counts")
        .then()
        .statusCode(200);
    assertThat(pieces("SOUTH", part)).isZero();
  }

  @Test
  @DisplayName("give by hand to other places, to scrap and to the supplier, each with its reason")
  void moved() {
    opening("DEPOT", part, 8);
    move("DEPOT", "SOUTH", part, 3, "brought-along").statusCode(200).body("nowAtTo", equalTo(3));
    move("supplier", "SOUTH", part, 2, "delivered").statusCode(200);
    move("SOUTH", "scrap", part, 1, "broken").statusCode(200);
    assertThat(pieces("DEPOT", part)).isEqualTo(5);
    assertThat(pieces("SOUTH", part)).isEqualTo(4);
    move("supplier", "scrap", part, 1, "broken")
        .statusCode(400)
        .body("errors[0].field", equalTo("to"));
    move("SOUTH", "SOUTH", part, 1, "other").statusCode(400);
    move("SOUTH", "DEPOT", part, 0, "other")
        .statusCode(400)
        .body("errors[0].field", equalTo("quantity"));
    move("SOUTH", "DEPOT", part, 1, "").statusCode(400);
    String csv = as("depot").get("/stock/ledger/csv?place=SOUTH&item=" + part).asString();
    assertThat(csv.lines().skip(1).map(l -> l.substring(l.lastIndexOf(',') + 1)))
        .containsExactly("4", "5", "3");
    as("depot")
        .get("/stock/ledger?place=SOUTH&item=" + part)
        .then()
        .body(containsString("Moved: Broken"), containsString("scrap"));
    as("fitter.south").get("/stock/ledger?place=SOUTH&item=" + part).then().statusCode(403);
  }

  @Test
  @DisplayName("give by form, which says beside the field what is wrong")
  void movedByForm() {
    opening("DEPOT", part, 8);
    form("depot", UUID.randomUUID())
        .formParam("part", part + "|")
        .formParam("from", "DEPOT")
        .formParam("to", "SOUTH")
        .formParam("quantity", "lots")
        .formParam("reason", "other")
        .post("/stock/move")
        .then()
        .statusCode(400)
        .body(containsString("id=\"quantity-error\""), containsString("value=\"lots\""));
    form("depot", UUID.randomUUID())
        .formParam("part", part + "|")
        .formParam("from", "DEPOT")
        .formParam("to", "SOUTH")
        .formParam("quantity", "2")
        .formParam("reason", "other")
        .post("/stock/move")
        .then()
        .statusCode(303);
    assertThat(pieces("SOUTH", part)).isEqualTo(2);
  }

  @Test
  @DisplayName("serve who waits for a part, once it is found by a count")
  void served() {
    try (Fitting fitting = new Fitting(bootstrap)) {
      UUID refitCase = fitting.opensFor("SOUTH", Fitting.part(part));
      fitting.hears("replacement-missing", "refitCase", refitCase);
      count("depot", "SOUTH", part, 1, 0, "found").statusCode(200);
      fitting.hears("replacement-reserved", "refitCase", refitCase);
    }
  }

  @Test
  @DisplayName("do not take in a part for a model for which it is not listed")
  void imported() {
    importing("parts", "all-or-none", "place,item,model,quantity\nSOUTH,liner-crown,model-b,1\n")
        .statusCode(422)
        .body("errors[0].column", equalTo("model"))
        .body("errors[0].message", containsString("compatibility table"));
  }

  @Test
  @DisplayName("are booked for a part of another model too, and the equipment manager is told")
  void toCheck() {
    try (Fitting fitting = new Fitting(bootstrap)) {
      fitting.passes(UUID.randomUUID(), "SOUTH", "model-b", part, "chin-strap-small");
      await().atMost(LONG).untilAsserted(() -> assertThat(pieces("SOUTH", part)).isEqualTo(-1));
    }
    String page = as("manager").get("/stock/checks").then().statusCode(200).extract().asString();
    assertThat(page).contains("/" + part + "\"");
    as("depot").get("/stock/checks").then().statusCode(403);
    as("manager").get("/stock").then().body(containsString("Parts to check"));
    String action =
        page.replaceAll("(?s).*action=\"/inventory(/stock/checks/[^\"]*/" + part + ")\".*", "$1");
    form("manager", UUID.randomUUID()).post(action).then().statusCode(303);
    assertThat(as("manager").get("/stock/checks").asString()).doesNotContain("/" + part + "\"");
  }
}
