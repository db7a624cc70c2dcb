package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Shelves.count;
import static org.tapeline.inventory.whole.Shelves.freshPart;
import static org.tapeline.inventory.whole.Shelves.move;
import static org.tapeline.inventory.whole.Shelves.opening;
import static org.tapeline.inventory.whole.Shelves.pieces;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.rebuild.Kept;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.Rebuild;
import org.tapeline.journal.rebuild.TableClasses;
import org.tapeline.journal.rebuild.TableResult;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Inventory's read models, rebuilt while it serves")
class RebuildTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject Rebuild rebuild;
  @Inject Instance<ReadModel> models;
  @Inject Kept kept;
  @Inject Transactions transactions;
  @Inject Database database;

  private final String model = freshModel();
  private final String part = freshPart();

  @BeforeEach
  void putRightWhatOtherTestsLeft() {
    Depot.places();
    run();
  }

  private List<TableResult> run() {
    return rebuild.run(models.stream().toList(), false, (done, total) -> {});
  }

  private static List<TableResult> differing(List<TableResult> results) {
    return results.stream().filter(result -> result.differing() > 0).toList();
  }

  private void helmetsLives(Fitting fitting) {
    UUID player = UUID.randomUUID();
    fitting.enrols("NORTH", List.of(player));
    String first = Depot.helmet(model, "youth-small", "NORTH");
    String next = Depot.helmet(model, "youth-small", "NORTH");
    fitting.fits(player, first, "NORTH");
    fitting.signsOff(player, first, "NORTH");
    fitting.signsOff(player, next, "NORTH", 2);
    await().atMost(SOON).until(() -> Depot.stateOf(next).equals("issued"));
    Depot.damage("fitter.north", first, "shell", "scratch");
    Depot.damage("fitter.north", Depot.helmet(model, "adult", "NORTH"), "shell", "crack");
    commandOf("manager")
        .contentType("application/json")
        .body(Map.of("reason", "recall", "reference", "R-2026-014", "model", model))
        .post("/api/holds")
        .then()
        .statusCode(201);
    await().atMost(SOON).until(() -> Depot.stateOf(next).equals("held"));
  }

  private void shelves(Fitting fitting) {
    opening("RIVER", part, 4);
    opening("NORTH", part, 3);
    count("depot", "NORTH", part, 2, 3, "found").statusCode(200);
    move("supplier", "NORTH", part, 2, "delivered").statusCode(200);
    fitting.passes(UUID.randomUUID(), "NORTH", model, part, part, part);
    await().atMost(SOON).until(() -> pieces("NORTH", part) == 1);
    UUID refitCase = fitting.opensFor("SOUTH", Fitting.part(part));
    fitting.hears("replacement-reserved", "refitCase", refitCase);
    String request =
        as("depot")
            .get("/api/restock")
            .path("find { it.item == '" + part + "' && it.place == 'SOUTH' }.request");
    commandOf("depot")
        .contentType("application/json")
        .body(Map.of("quantity", 0, "damaged", 1))
        .post("/api/restock/" + request + "/receive")
        .then()
        .statusCode(200);
  }

  @Test
  @DisplayName("are equal to those that grew; a helmet and a count that were forged are put right")
  void equalAndPutRight() {
    try (Fitting fitting = new Fitting(bootstrap)) {
      helmetsLives(fitting);
      shelves(fitting);
    }
    List<TableResult> results = run();
    assertThat(differing(results)).isEmpty();
    assertThat(results.stream().filter(result -> result.rows() == 0).map(TableResult::table))
        .as("tables of which nothing was tried")
        .isSubsetOf("advised_size", "size_forecast");
    int before = pieces("RIVER", part);
    String forged = Depot.helmet(model, "youth-large", "NORTH");
    database.change("update helmet set size = 'adult', marks = 3 where tag = ?", forged);
    database.change("update ledger_entry set amount = amount * 3 where item = ?", part);
    database.change("update stock_counted set counted = 99 where item = ?", part);
    assertThat(differing(run()))
        .flatExtracting(TableResult::examples)
        .contains("changed " + forged + " (size, marks)")
        .anyMatch(example -> example.contains(part));
    assertThat(pieces("RIVER", part)).isEqualTo(before);
    assertThat(differing(run())).isEmpty();
  }

  @Test
  @DisplayName("and what is kept account for every table of the service, each once")
  void everyTable() {
    List<ReadModel> all = models.stream().toList();
    List<String> faults = transactions.required(c -> TableClasses.faults(c, all, kept));
    assertThat(faults).isEmpty();
  }
}
