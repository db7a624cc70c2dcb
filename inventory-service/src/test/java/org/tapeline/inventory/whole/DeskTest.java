package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.importing;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("At the desk")
class DeskTest {
  private static final String SIZE = "youth-medium";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  private Fitting fitting;
  private final String model = freshModel();

  @BeforeEach
  void start() {
    Depot.places();
    fitting = new Fitting(bootstrap);
  }

  @AfterEach
  void stop() {
    fitting.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/grid/helmets", "/grid/parts", "/short", "/short.csv", "/stock", "/restock"})
  @DisplayName("the pages of the depot are for the warehouse and the equipment manager")
  void access(String page) {
    as("depot").get(page).then().statusCode(200);
    as("manager").get(page).then().statusCode(200);
    as("fitter.north").get(page).then().statusCode(403);
    as("coach.hawks").get(page).then().statusCode(403);
  }

  @Test
  @DisplayName("today counts what is to be inspected and who waits, with a way to each")
  void today() {
    damage("depot", helmet(model, SIZE, "DEPOT"), "shell", "crack").statusCode(200);
    fitting.hears(
        "replacement-missing",
        "refitCase",
        fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE)));
    page("/")
        .body(
            containsString("href=\"/inventory/inspections\""),
            containsString("to inspect"),
            containsString("href=\"/inventory/waiting\""));
  }

  @Test
  @DisplayName(
      "the grid counts free, kept and out of use by place and size, and says what is short")
  void helmetGrid() {
    helmet(model, SIZE, "NORTH");
    helmet(model, SIZE, "RIVER");
    damage("depot", helmet(model, SIZE, "RIVER"), "shell", "crack").statusCode(200);
    UUID kept = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-reserved", "refitCase", kept);
    UUID waits = fitting.opens(UUID.randomUUID(), "SOUTH", Fitting.helmet(model, "youth-large"));
    fitting.hears("replacement-missing", "refitCase", waits);
    assertThat(csv("/grid-files/helmets.csv"))
        .contains(
            "NORTH," + model + "," + SIZE + ",0,1,0,0,0",
            "RIVER," + model + "," + SIZE + ",1,0,0,1,0",
            "SOUTH," + model + ",youth-large,0,0,0,0,1");
    grid()
        .body(
            containsString("short 1"),
            containsString(
                "/inventory/helmets?place=RIVER&amp;model=" + model + "&amp;size=" + SIZE));
  }

  private ValidatableResponse grid() {
    return as("depot").queryParam("model", model).get("/grid/helmets").then().statusCode(200);
  }

  private String csv(String path) {
    return as("depot").queryParam("model", model).get(path).then().extract().asString();
  }

  @Test
  @DisplayName("the grid of parts shows fewer than none as a shelf to count")
  void partsGrid() {
    String item = "pad-" + model;
    importing("parts", "all-or-none", "place,item,model,quantity\nRIVER," + item + ",,3\n")
        .statusCode(200);
    fitting.passes(UUID.randomUUID(), "SOUTH", "model-a", item);
    fitting.hears("part-used", "item", item);
    as("depot")
        .queryParam("item", item)
        .get("/grid/parts")
        .then()
        .statusCode(200)
        .body(containsString("count again"), containsString("River Bend"));
    String csv = as("depot").queryParam("item", item).get("/grid-files/parts.csv").asString();
    assertThat(csv).contains("RIVER," + item + ",3,0,0").contains("SOUTH," + item + ",-1,0,0");
  }

  @Test
  @DisplayName("what is waited for is short, and what was asked for is on the way")
  void shortList() {
    UUID waits = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", waits);
    String line =
        as("depot")
            .get("/short.csv")
            .asString()
            .lines()
            .filter(l -> l.startsWith("helmet:" + model))
            .findFirst()
            .orElseThrow();
    String[] cells = line.split(",", -1);
    assertThat(cells[1]).isNotEmpty();
    assertThat(cells[2]).isEqualTo("1");
    assertThat(cells[9]).isEqualTo("1");
    assertThat(cells[11]).isEqualTo("1");
    page("/short").body(containsString("/inventory/waiting?need=helmet:" + model + ":" + SIZE));
  }

  @Test
  @DisplayName("the list of helmets is sorted, paged and saved whole, for a fitter the own ones")
  void list() {
    StringBuilder many =
        new StringBuilder("model,size,lot,manufactured_on,certified_until,place\n");
    for (int i = 0; i < 205; i++) {
      many.append(model + "," + SIZE + ",P-" + i + ",2025-05-15,2029-05-15,SOUTH\n");
    }
    importing("helmets", "all-or-none", many.toString()).statusCode(200);
    String last =
        as("depot").queryParam("model", model).queryParam("page", 3).get("/helmets").asString();
    assertThat(last).contains("201 to 205 of 205 helmets").doesNotContain("Next page");
    String first =
        as("depot")
            .queryParam("model", model)
            .queryParam("sort", "tag")
            .queryParam("falling", "yes")
            .get("/helmets")
            .asString();
    assertThat(first).contains("1 to 100 of 205").contains("aria-sort=\"descending\"");
    assertThat(csv("/helmets.csv").lines()).hasSize(206);
    assertThat(as("fitter.north").queryParam("model", model).get("/helmets.csv").asString().lines())
        .hasSize(1);
    as("coach.hawks").get("/helmets").then().statusCode(403);
  }

  @Test
  @DisplayName(
      "a tag goes straight to its helmet, one with a slip is offered, to whom it is theirs")
  void findsTags() {
    String tag = helmet(model, SIZE, "SOUTH");
    goesTo(find("depot", tag.toLowerCase(Locale.ROOT)), "/inventory/helmets/" + tag);
    String slip = (tag.charAt(3) == '5' ? "6" : "5");
    String typed = tag.substring(0, 3) + slip + tag.substring(4);
    find("depot", typed)
        .then()
        .statusCode(200)
        .body(containsString("Did you mean"))
        .body(containsString("/inventory/helmets/" + tag));
    find("fitter.south", typed).then().body(containsString("/inventory/helmets/" + tag));
    find("fitter.north", typed).then().body(not(containsString(tag)));
    find("fitter.north", tag).then().statusCode(200).body(not(containsString("helmets/" + tag)));
  }

  @Test
  @DisplayName("a request, a re-fit and a player are found by the last characters of their number")
  void findsNumbers() {
    UUID player = UUID.randomUUID();
    UUID refitCase = fitting.opens(player, "NORTH", Fitting.helmet(model, SIZE));
    String request =
        fitting.hears("replacement-missing", "refitCase", refitCase).at("/requests/0").asText();
    goesTo(find("depot", request.substring(28)), "/inventory/restock#request-" + request);
    page("/restock").body(containsString("id=\"request-" + request));
    goesTo(find("depot", refitCase.toString()), "/inventory/cases/" + refitCase);
    goesTo(find("fitter.north", refitCase.toString()), "/inventory/cases/" + refitCase);
    find("fitter.south", refitCase.toString()).then().statusCode(200);
    find("fitter.north", request).then().statusCode(200);
    page("/players/" + player).body(containsString("Re-fit"), containsString("no helmet of ours"));
  }

  @Test
  @DisplayName("a player is found by the number in the roster, by who works at the field")
  void findsRosterNumbers() {
    UUID player = UUID.randomUUID();
    fitting.enrols("NORTH", List.of(player));
    String number = Fitting.numberOf(player);
    await()
        .untilAsserted(
            () ->
                goesTo(
                    find("depot", number.toLowerCase(Locale.ROOT)),
                    "/inventory/players/" + player));
    goesTo(find("fitter.north", number), "/inventory/players/" + player);
    find("fitter.south", number)
        .then()
        .statusCode(200)
        .body(not(containsString(player.toString())));
    page("/players/" + player).body(containsString("Player " + number));
  }

  @Test
  @DisplayName(
      "a place and a part are found by name, and a player's name is looked for where it is known")
  void findsPlacesPartsAndNames() {
    String item = "strap-" + model;
    importing("parts", "all-or-none", "place,item,model,quantity\nRIVER," + item + ",,3\n")
        .statusCode(200);
    goesTo(find("depot", "river bend"), "/inventory/grid/helmets?place=RIVER");
    goesTo(find("depot", item), "/inventory/grid/parts?item=" + item);
    find("manager", "Ada Example")
        .then()
        .statusCode(200)
        .body(containsString("/sizing/players?q=Ada+Example"), containsString("data-words"));
    find("depot", "Ada Example").then().body(not(containsString("/sizing/players")));
    find("depot", "<script>").then().statusCode(200).body(not(containsString("<script>\"")));
    find("depot", "").then().statusCode(200);
    find("coach.hawks", "x").then().statusCode(403);
  }

  @Test
  @DisplayName("the helmet that a player has is told by number, to who works at the field")
  void helmetOfPlayer() {
    String tag = helmet(model, SIZE, "SOUTH");
    UUID player = UUID.randomUUID();
    fitting.signsOff(player, tag, "SOUTH");
    fitting.hears("helmet-issued", "tag", tag);
    assertThat(helmetsOf("fitter.south", player)).contains(tag);
    assertThat(helmetsOf("manager", player)).contains(tag);
    assertThat(helmetsOf("fitter.north", player)).isEqualTo("[]");
  }

  private static String helmetsOf(String user, UUID player) {
    return as(user).queryParam("player", player).get("/api/player-helmets").asString();
  }

  private static Response find(String user, String words) {
    return as(user).redirects().follow(false).queryParam("q", words).get("/search");
  }

  private static void goesTo(Response answer, String href) {
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(answer.header("Location")).isEqualTo(href);
  }

  private static ValidatableResponse page(String path) {
    return as("depot").get(path).then().statusCode(200);
  }
}
