package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.rebuild.Kept;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.Rebuild;
import org.tapeline.journal.rebuild.TableClasses;
import org.tapeline.journal.rebuild.TableResult;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Fitting's read models, rebuilt while it serves")
class RebuildTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Rebuild rebuild;
  @Inject Instance<ReadModel> models;
  @Inject Kept kept;
  @Inject Transactions transactions;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
  private Peers peers;

  @BeforeEach
  void putRightWhatOtherTestsLeft() {
    peers = new Peers(kafka);
    run();
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private List<TableResult> run() {
    return rebuild.run(models.stream().toList(), false, (done, total) -> {});
  }

  private static List<TableResult> differing(List<TableResult> results) {
    return results.stream().filter(result -> result.differing() > 0).toList();
  }

  private void execute(String sql) {
    transactions.required(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            return statement.executeUpdate(sql);
          }
        });
  }

  private Envelope partRequested(UUID request) {
    return peers.event(
        "inventory.events",
        "restock-requested",
        "restock-" + request,
        "NORTH",
        Map.of(
            "request",
            request,
            "kind",
            "restock",
            "place",
            "NORTH",
            "item",
            "jaw-pad-15mm",
            "quantity",
            1,
            "causes",
            List.of(UUID.randomUUID()),
            "expectedAt",
            Instant.now(),
            "at",
            Instant.now()));
  }

  private boolean allIsKnown() {
    return transactions.required(
        connection -> {
          try (Statement select = connection.createStatement();
              ResultSet row =
                  select.executeQuery(
                      "select 1 from guardianship, travel, part_count, part_move,"
                          + " part_requested, hold, hold_helmet")) {
            return row.next();
          }
        });
  }

  /**
   * Somebody of everything: fitted, failed, paused, out of play, with a case, a booking, a haircut.
   */
  private void aSeason() {
    Person fitted = peers.arrives("NORTH");
    peers.send(
        peers.guardian(UUID.randomUUID(), fitted.player()),
        peers.field("FAR", "America/Chicago", Map.of("NORTH", 40)),
        peers.example("stock-counted", "stock-" + UUID.randomUUID()),
        peers.example("part-used", "stock-" + UUID.randomUUID()),
        partRequested(UUID.randomUUID()),
        new Holds(peers)
            .placed(UUID.randomUUID(), List.of("LOT-REBUILT"), List.of("LV0000"), Map.of()));
    fitter.fits(fitted.player(), fitted.tag());
    fitter.says("/api/hair-changes", Map.of("player", fitted.player(), "hair", "short"));
    peers.arrives("CHILLY");
    new Fitter("manager", "CHILLY")
        .says("/api/conditions", Map.of("field", "CHILLY", "air", "4 C"));
    Person pulled = peers.arrives("NORTH");
    UUID session = fitter.fits(pulled.player(), pulled.tag());
    fitter.announces(LocalDate.now().plusDays(3).toString(), "17:30", "20:00");
    peers.send(
        peers.issued(pulled.tag(), pulled.player(), session),
        peers.quarantined(pulled.tag(), pulled.player()));
    UUID refitCase = peers.refitOf(pulled.player());
    peers.send(peers.reserved(refitCase, pulled.player(), pulled.tag() + "R", "youth-medium"));
    peers.hears("refit-booked", pulled.player());
    Person failed = peers.arrives("NORTH");
    fitter.fails(failed.player(), failed.tag());
    Person paused = peers.arrives("NORTH");
    UUID open = fitter.opensWith(paused.player(), paused.tag());
    fitter.pauses(open);
    fitter.resumes(open);
    Person hurt = peers.arrives("NORTH");
    fitter.fits(hurt.player(), hurt.tag());
    fitter.says("/api/concussions", Map.of("player", hurt.player()));
    await().atMost(PATIENCE).until(this::allIsKnown);
  }

  @Test
  @DisplayName("are equal to those that grew with the season, though fits go on meanwhile")
  void whileServing() throws Exception {
    aSeason();
    AtomicBoolean enough = new AtomicBoolean();
    AtomicInteger fits = new AtomicInteger();
    ExecutorService field = Executors.newSingleThreadExecutor();
    Future<?> fitting =
        field.submit(
            () -> {
              while (!enough.get()) {
                Person next = peers.arrives("NORTH");
                fitter.fits(next.player(), next.tag());
                fits.incrementAndGet();
              }
            });
    await().atMost(PATIENCE).until(() -> fits.get() > 0);
    List<TableResult> results = run();
    int before = fits.get();
    await().atMost(PATIENCE).until(() -> fits.get() > before);
    enough.set(true);
    fitting.get(60, TimeUnit.SECONDS);
    field.shutdown();
    assertThat(differing(results)).isEmpty();
    assertThat(results).as("something of everything").noneMatch(result -> result.rows() == 0);
  }

  @Test
  @DisplayName("name what was forged in the tables of sign-offs, and show the truth after")
  void forgedSignOff() {
    Person failed = peers.arrives("NORTH");
    fitter.fits(failed.player(), failed.tag());
    fitter.fails(failed.player(), failed.tag());
    Person fitted = peers.arrives("NORTH");
    fitter.fits(fitted.player(), fitted.tag());
    await().atMost(PATIENCE).until(() -> Fitter.state(fitted, "code").equals("may-wear"));
    execute("update sign_off set state = 'signed-off' where player = '" + failed.player() + "'");
    execute("delete from sign_off where player = '" + fitted.player() + "'");
    await().atMost(PATIENCE).until(() -> !Fitter.state(fitted, "code").equals("may-wear"));
    assertThat(differing(run()))
        .flatExtracting(TableResult::examples)
        .contains("changed " + failed.player() + " (state)", "missing " + fitted.player());
    await().atMost(PATIENCE).until(() -> Fitter.state(fitted, "code").equals("may-wear"));
    assertThat(Fitter.state(failed, "code")).isEqualTo("do-not-wear");
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
