package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reservation.Candidate;
import org.tapeline.inventory.reservation.SearchWeights;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The search for a replacement")
class SearchTest {
  private static final String SIZE = "youth-medium";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject Database database;
  @Inject SearchWeights weights;

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

  @Test
  @DisplayName("passes over a marked helmet for one without marks, and says why on the case's page")
  void marks() {
    String marked = helmet(model, SIZE, "NORTH");
    String clean = helmet(model, SIZE, "NORTH");
    damage("fitter.north", marked, "shell", "scratch").statusCode(200);
    UUID refitCase = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    assertThat(fitting.hears("replacement-reserved", "refitCase", refitCase).path("tag").asText())
        .isEqualTo(clean);
    as("fitter.north")
        .get("/cases/" + refitCase)
        .then()
        .statusCode(200)
        .body(containsString("At the field already, no marks reported"), containsString(clean));
    as("fitter.south").get("/cases/" + refitCase).then().statusCode(403);
    as("coach.hawks").get("/cases/" + refitCase).then().statusCode(403);
  }

  @Test
  @DisplayName("finds the one that the score, worked out apart from the database, says is best")
  void asTheScoreSays() {
    Random random = new Random(7);
    LocalDate today = LocalDate.now(ZoneId.of("America/Denver"));
    List<Candidate> all =
        IntStream.range(0, 12)
            .mapToObj(
                i -> {
                  String place = List.of("NORTH", "RIVER", "SOUTH", "DEPOT").get(random.nextInt(4));
                  String tag = helmet(model, SIZE, place);
                  int marks = random.nextInt(8);
                  Optional<LocalDate> until =
                      random.nextInt(4) == 0
                          ? Optional.empty()
                          : Optional.of(today.plusDays(random.nextInt(600)));
                  database.change(
                      "update helmet set marks = ?, certified_until = ?::date where tag = ?",
                      marks,
                      until.map(Object::toString).orElse(null),
                      tag);
                  return new Candidate(tag, place, place.equals("NORTH"), way(place), marks, until);
                })
            .toList();
    List<String> best =
        all.stream()
            .sorted(Comparator.comparingDouble(c -> c.score(weights, today)))
            .limit(3)
            .map(Candidate::tag)
            .toList();
    for (String tag : best) {
      UUID refitCase = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
      assertThat(fitting.hears("replacement-reserved", "refitCase", refitCase).path("tag").asText())
          .isEqualTo(tag);
    }
  }

  private static Optional<Integer> way(String from) {
    return switch (from) {
      case "RIVER" -> Optional.of(16);
      case "SOUTH" -> Optional.of(30);
      case "DEPOT" -> Optional.of(18);
      default -> Optional.empty();
    };
  }

  @Test
  @DisplayName(
      "leaves who finds nothing on the waiting list: the urgent first, each its place in line")
  void waitingList() {
    Instant before = Instant.parse("2026-08-01T08:00:00Z");
    UUID early = fitting.opensAt(before, "soon", "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", early);
    UUID urgent =
        fitting.opensAt(
            before.plusSeconds(60), "do-not-wear", "SOUTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", urgent);
    String need = "helmet:" + model + ":" + SIZE;
    String csv =
        as("depot").queryParam("need", need).get("/waiting.csv").then().extract().asString();
    assertThat(csv.lines().skip(1).map(line -> line.split(",")[0]).toList())
        .containsExactly(urgent.toString(), early.toString());
    String north =
        as("fitter.north").queryParam("need", need).get("/waiting").then().extract().asString();
    assertThat(north)
        .contains(early.toString())
        .contains("2 of 2")
        .doesNotContain(urgent.toString());
    as("coach.hawks").get("/waiting").then().statusCode(403);
  }
}
