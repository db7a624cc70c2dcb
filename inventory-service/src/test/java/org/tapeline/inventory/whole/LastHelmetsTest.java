package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;

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
import java.util.concurrent.TimeUnit;
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
@DisplayName("Twenty who ask at once for the last five helmets")
class LastHelmetsTest {
  private static final int ASKING = 20;
  private static final int HELMETS = 5;

  @Inject Reservations reservations;
  @Inject Database database;
  @Inject Transactions transactions;

  @Test
  @DisplayName("get exactly five, each to one case, and one request for the rest")
  void exactlyFive() throws Exception {
    Depot.places();
    String model = freshModel();
    for (int i = 0; i < HELMETS; i++) {
      helmet(model, "youth-large", "DEPOT");
    }
    List<UUID> cases = new ArrayList<>();
    for (int i = 0; i < ASKING; i++) {
      cases.add(openCase(model));
    }

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

    List<String> tags =
        database.list(
            "select r.tag from reservation r join helmet h on h.tag = r.tag"
                + " where r.status = 'live' and h.model = ?",
            row -> row.getString(1),
            model);
    assertThat(tags).hasSize(HELMETS).doesNotHaveDuplicates();
    List<Integer> asked =
        database.list(
            "select quantity from restock where kind = 'restock' and model = ?",
            row -> row.getInt(1),
            model);
    assertThat(asked).containsExactly(ASKING - HELMETS);
    as("depot").get("/restock").then().statusCode(200);
  }

  private boolean ask(CyclicBarrier together, UUID refitCase) throws Exception {
    together.await();
    return transactions.required(
        c -> {
          reservations.reserveOrRequest(refitCase, "", Cause.command(UUID.randomUUID()));
          return true;
        });
  }

  private UUID openCase(String model) {
    UUID refitCase = UUID.randomUUID();
    database.change(
        "insert into refit_case values (?, ?, 'NORTH', 'soon', now(), true)",
        refitCase,
        UUID.randomUUID());
    database.change(
        "insert into case_need values (?, ?, 'helmet', ?, 'youth-large', null, 'waiting', now())",
        refitCase,
        "helmet:" + model + ":youth-large",
        model);
    return refitCase;
  }
}
