package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.importing;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reservation.Reservations;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Two hundred who ask at once for the last fifty helmets")
class LastHelmetsTest {
  private static final int ASKING = 200;
  private static final int HELMETS = 50;
  private static final List<String> FIELDS = List.of("NORTH", "RIVER", "SOUTH");

  /** As many transactions at a time as the pool has connections, with some to spare. */
  private final Semaphore connections = new Semaphore(16);

  @Inject Reservations reservations;
  @Inject Database database;
  @Inject Transactions transactions;

  @Test
  @DisplayName("get exactly fifty, each to one case, and an honest answer for every other")
  void exactlyFifty() throws Exception {
    Depot.places();
    String model = freshModel();
    StringBuilder helmets =
        new StringBuilder("model,size,lot,manufactured_on,certified_until,place\n");
    for (int i = 0; i < HELMETS; i++) {
      String place = List.of("DEPOT", "NORTH", "RIVER").get(i % 3);
      helmets.append(model + ",youth-large,LAST-" + i + ",2025-05-15,2029-05-15," + place + "\n");
    }
    importing("helmets", "all-or-none", helmets.toString()).statusCode(200);
    List<UUID> cases = new ArrayList<>();
    for (int i = 0; i < ASKING; i++) {
      cases.add(openCase(model, FIELDS.get(i % FIELDS.size())));
    }

    askAllAtOnce(cases);

    List<String> tags =
        database.list(
            "select r.tag from reservation r join helmet h on h.tag = r.tag"
                + " where r.status = 'live' and h.model = ? and r.why <> ''"
                + " and h.reserved_for = r.refit_case",
            row -> row.getString(1),
            model);
    assertThat(tags).hasSize(HELMETS).doesNotHaveDuplicates();
    assertThat(said("replacement-reserved", cases)).isEqualTo(HELMETS);
    assertThat(said("replacement-missing", cases)).isEqualTo(ASKING - HELMETS);
    assertThat(
            database.first(
                "select sum(quantity) from restock where kind = 'restock' and model = ?",
                row -> row.getInt(1),
                model))
        .contains(ASKING - HELMETS);
    as("depot")
        .queryParam("need", "helmet:" + model + ":youth-large")
        .get("/waiting")
        .then()
        .statusCode(200)
        .body(Matchers.containsString("150 of 150"));
  }

  private void askAllAtOnce(List<UUID> cases) throws Exception {
    CyclicBarrier together = new CyclicBarrier(ASKING);
    List<Future<Boolean>> all = new ArrayList<>();
    try (ExecutorService threads = Executors.newFixedThreadPool(ASKING)) {
      for (UUID refitCase : cases) {
        all.add(threads.submit(() -> ask(together, refitCase)));
      }
      for (Future<Boolean> one : all) {
        assertThat(one.get(60, TimeUnit.SECONDS)).isTrue();
      }
    }
  }

  private int said(String event, List<UUID> cases) {
    return database
        .first(
            "select count(*) from journal where type like ?"
                + " and data ->> 'refitCase' = any (string_to_array(?, ','))",
            row -> row.getInt(1),
            "%" + event + "%",
            String.join(",", cases.stream().map(UUID::toString).toList()))
        .orElse(0);
  }

  private boolean ask(CyclicBarrier together, UUID refitCase) throws Exception {
    together.await();
    connections.acquire();
    try {
      return transactions.required(
          c -> {
            reservations.reserveOrRequest(refitCase, "", Cause.command(UUID.randomUUID()));
            return true;
          });
    } finally {
      connections.release();
    }
  }

  private UUID openCase(String model, String field) {
    UUID refitCase = UUID.randomUUID();
    database.change(
        "insert into refit_case values (?, ?, ?, 'soon', now(), true)",
        refitCase,
        UUID.randomUUID(),
        field);
    database.change(
        "insert into case_need values (?, ?, 'helmet', ?, 'youth-large', null, 'waiting', now())",
        refitCase,
        "helmet:" + model + ":youth-large",
        model);
    return refitCase;
  }
}
