package org.tapeline.inventory.whole;

import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.importing;

import com.fasterxml.jackson.databind.JsonNode;
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

/** Two fields near each other and their depot, that no other test uses, with players at one. */
abstract class ShelfPlaces {
  private static final AtomicInteger NEXT = new AtomicInteger();
  static final int PLAYERS = 60;

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  final int number = NEXT.incrementAndGet();
  final String field = "SHELF-F" + number;
  final String other = "SHELF-G" + number;
  final String depot = "SHELF-D" + number;
  final List<UUID> players = IntStream.range(0, PLAYERS).mapToObj(i -> UUID.randomUUID()).toList();
  Fitting fitting;

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
    fitting.enrols(field, players);
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

  static void receives(JsonNode asked, int good, int damaged) {
    receives(asked.path("request").asText(), good, damaged);
  }

  static void receives(String request, int good, int damaged) {
    commandOf("depot")
        .contentType("application/json")
        .body("{\"quantity\":" + good + ",\"damaged\":" + damaged + "}")
        .post("/api/restock/" + request + "/receive")
        .then()
        .statusCode(200);
  }

  void stock(String place, String item, int pieces) {
    importing(
            "parts",
            "all-or-none",
            "place,item,model,quantity\n" + place + "," + item + ",," + pieces + "\n")
        .statusCode(200);
  }

  void passes(String item, int pieces) {
    int before = pieces(field, item);
    String[] parts = IntStream.range(0, pieces).mapToObj(i -> item).toArray(String[]::new);
    fitting.passes(UUID.randomUUID(), field, "model-a", parts);
    Awaitility.await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> pieces(field, item) == before - pieces);
  }

  JsonPath suggestion(String item) {
    return as("depot")
        .queryParam("place", field)
        .get("/api/restock/suggestions")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .setRootPath("find { it.item == '" + item + "' }");
  }

  JsonNode asked(String item, int times) {
    return fitting.asked(field, item, times);
  }

  List<Map<String, Object>> open(String item) {
    return as("depot")
        .get("/api/restock")
        .jsonPath()
        .getList("findAll { it.place == '" + field + "' && it.item == '" + item + "' }");
  }

  int pieces(String place, String item) {
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
