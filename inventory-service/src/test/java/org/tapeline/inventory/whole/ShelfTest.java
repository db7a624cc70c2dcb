package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.importing;
import static org.tapeline.inventory.whole.Depot.step;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.awaitility.Awaitility;
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
@DisplayName("By itself, with each event delivered twice, a shelf")
class ShelfTest {
  private static final AtomicInteger NEXT = new AtomicInteger();
  private static final int PLAYERS = 60;

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  private final int number = NEXT.incrementAndGet();
  private final String field = "SHELF-F" + number;
  private final String other = "SHELF-G" + number;
  private final String depot = "SHELF-D" + number;
  private Fitting fitting;

  @BeforeEach
  void start() {
    Depot.places();
    importing(
            "places",
            "all-or-none",
            "code,name,kind,altitude_m,time_zone\n"
                + place(field, "field")
                + place(other, "field")
                + place(depot, "depot"))
        .statusCode(200);
    importing(
            "travel",
            "all-or-none",
            "from,to,minutes\n" + field + "," + depot + ",10\n" + other + "," + field + ",12\n")
        .statusCode(200);
    fitting = new Fitting(bootstrap);
    fitting.enrols(field, IntStream.range(0, PLAYERS).mapToObj(i -> UUID.randomUUID()).toList());
    Awaitility.await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> suggestion("valve").getInt("players") == PLAYERS);
  }

  private static String place(String code, String kind) {
    return code + "," + code + "," + kind + ",1500,America/Denver\n";
  }

  @AfterEach
  void stop() {
    fitting.close();
  }

  @Test
  @DisplayName("that is used up has more brought from the depot, which has some")
  void fromTheDepot() {
    stock(field, "valve", 4);
    stock(depot, "valve", 50);
    passes("valve", 4);
    JsonNode asked = asked("valve", 1);
    assertThat(asked.path("kind").asText()).isEqualTo("transfer");
    assertThat(asked.path("fromPlace").asText()).isEqualTo(depot);
    assertThat(asked.path("causes")).isEmpty();
    assertThat(asked.path("forStock").asInt()).isPositive();
    assertThat(asked.path("quantity")).isEqualTo(asked.path("forStock"));

    int before = pieces(depot, "valve");
    step(asked.path("request").asText(), "receive").statusCode(200);
    assertThat(pieces(field, "valve")).isEqualTo(asked.path("quantity").asInt());
    assertThat(pieces(depot, "valve")).isEqualTo(before - asked.path("quantity").asInt());
    assertThat(suggestion("valve").getInt("quantity")).isZero();
  }

  @Test
  @DisplayName("that is still full enough has nothing requested")
  void fullEnough() {
    stock(field, "liner-crown", 30);
    passes("liner-crown", 1);
    assertThat(pieces(field, "liner-crown")).isEqualTo(29);
    assertThat(open("liner-crown")).isEmpty();
  }

  @Test
  @DisplayName("and a case share one request, and neither is lost when the other is")
  void sharesWithCases() {
    String strap = "jaw-pad-20mm";
    stock(field, strap, 1);
    passes(strap, 1);
    JsonNode shelf = asked(strap, 1);
    assertThat(shelf.path("kind").asText()).isEqualTo("restock");
    int forStock = shelf.path("forStock").asInt();
    assertThat(forStock % 10).as("in packs of 10").isZero();

    UUID player = UUID.randomUUID();
    UUID refitCase = fitting.opens(player, field, Fitting.part(strap));
    JsonNode merged = asked(strap, 2);
    assertThat(merged.path("request")).isEqualTo(shelf.path("request"));
    assertThat(merged.path("quantity").asInt()).isEqualTo(forStock + 1);
    assertThat(merged.path("causes")).hasSize(1);

    passes(strap, 1);
    fitting.closes(refitCase, player, "cancelled");
    Awaitility.await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(
            () -> {
              assertThat(open(strap)).hasSize(1);
              int left = (Integer) open(strap).getFirst().get("quantity");
              assertThat(open(strap).getFirst().get("forStock")).isEqualTo(left);
              assertThat(left).isGreaterThanOrEqualTo(forStock);
            });
    assertThat(pieces(field, strap)).isEqualTo(-1);
  }

  @Test
  @DisplayName("is helped out by a field near it that has more than it needs")
  void fromASurplus() {
    stock(other, "hardware-kit", 40);
    stock(field, "hardware-kit", 3);
    passes("hardware-kit", 3);
    JsonNode asked = asked("hardware-kit", 1);
    assertThat(asked.path("fromPlace").asText()).isEqualTo(other);
    assertThat(pieces(other, "hardware-kit")).isEqualTo(40);
  }

  @Test
  @DisplayName("is suggested with its numbers, requested once, and picked from a list")
  void suggested() {
    stock(depot, "chin-strap-small", 40);
    JsonPath suggested = suggestion("chin-strap-small");
    int pieces = suggested.getInt("quantity");
    assertThat(pieces).isPositive();
    assertThat(suggested.getString("because"))
        .contains(PLAYERS + " players", "0 used", "0 on the way")
        .contains(depot + " has " + pieces + " to spare.");
    as("depot")
        .queryParam("place", field)
        .get("/restock/suggestions")
        .then()
        .statusCode(200)
        .body(containsString("Request all of this"))
        .body(containsString(field + " chin-strap-small " + pieces));

    UUID id = UUID.randomUUID();
    String row = field + " chin-strap-small " + pieces;
    for (UUID command : new UUID[] {id, id, UUID.randomUUID()}) {
      as("depot")
          .redirects()
          .follow(false)
          .formParam("commandId", command)
          .formParam("mode", "in-season")
          .formParam("row", row)
          .post("/restock/suggestions")
          .then()
          .statusCode(303);
    }
    JsonNode asked = asked("chin-strap-small", 1);
    assertThat(asked.path("quantity").asInt()).isEqualTo(pieces);
    assertThat(open("chin-strap-small")).hasSize(1);
    new PickingHands(depot).picks(asked.path("request").asText());
  }

  @Test
  @DisplayName("is filled before the season by the depot, as far as the money goes")
  void beforeTheSeason() {
    JsonPath all = before("");
    int wanted = all.getInt("find { it.item == 'hardware-kit' }.quantity");
    assertThat(wanted % 25).isZero();
    assertThat(wanted).isPositive();
    assertThat(all.getString("find { it.item == 'hardware-kit' }.because"))
        .contains("a season of 12 weeks");
    JsonPath some = before("77.50");
    assertThat(some.getList("granted", Integer.class).stream().mapToInt(n -> n).sum())
        .isPositive()
        .isLessThan(all.getList("quantity", Integer.class).stream().mapToInt(n -> n).sum());
    as("manager")
        .queryParam("place", depot)
        .queryParam("mode", "pre-season")
        .queryParam("budget", "much<")
        .get("/restock/suggestions")
        .then()
        .statusCode(400)
        .body(containsString("much&lt;"))
        .body(containsString("Write an amount"));
    as("fitter.north").get("/api/restock/suggestions").then().statusCode(403);
  }

  @Test
  @DisplayName("gets more than was asked for into the books, and that is shown")
  void over() {
    String item = "over-" + number;
    UUID refitCase = fitting.opens(UUID.randomUUID(), field, Fitting.part(item));
    String request =
        fitting.hears("replacement-missing", "refitCase", refitCase).at("/requests/0").asText();
    commandOf("depot")
        .contentType("application/json")
        .body("{\"quantity\":3,\"damaged\":1}")
        .post("/api/restock/" + request + "/receive")
        .then()
        .statusCode(200);
    JsonNode received = fitting.hears("restock-received", "request", request);
    assertThat(received.path("over").asInt()).isEqualTo(3);
    assertThat(received.path("short").asInt()).isZero();
    assertThat(pieces(field, item)).isEqualTo(3);
    as("depot")
        .get("/restock/received")
        .then()
        .statusCode(200)
        .body(containsString("Over " + number));
  }

  private JsonPath before(String budget) {
    return as("manager")
        .queryParam("place", depot)
        .queryParam("mode", "pre-season")
        .queryParam("budget", budget)
        .get("/api/restock/suggestions")
        .then()
        .statusCode(200)
        .body("", hasSize(greaterThan(6)))
        .body("[0].mode", equalTo("pre-season"))
        .extract()
        .jsonPath();
  }

  private void stock(String place, String item, int pieces) {
    importing(
            "parts",
            "all-or-none",
            "place,item,model,quantity\n" + place + "," + item + ",," + pieces + "\n")
        .statusCode(200);
  }

  private void passes(String item, int pieces) {
    int before = pieces(field, item);
    String[] parts = IntStream.range(0, pieces).mapToObj(i -> item).toArray(String[]::new);
    fitting.passes(UUID.randomUUID(), field, "model-a", parts);
    Awaitility.await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> pieces(field, item) == before - pieces);
  }

  private JsonPath suggestion(String item) {
    return as("depot")
        .queryParam("place", field)
        .get("/api/restock/suggestions")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .setRootPath("find { it.item == '" + item + "' }");
  }

  private JsonNode asked(String item, int times) {
    return fitting.asked(field, item, times);
  }

  private List<Map<String, Object>> open(String item) {
    return as("depot")
        .get("/api/restock")
        .jsonPath()
        .getList("findAll { it.place == '" + field + "' && it.item == '" + item + "' }");
  }

  private int pieces(String place, String item) {
    return as("depot")
        .queryParam("place", place)
        .get("/api/stock")
        .jsonPath()
        .<Integer>getList("findAll { it.item == '" + item + "' }.pieces")
        .stream()
        .mapToInt(Integer::intValue)
        .sum();
  }
}
