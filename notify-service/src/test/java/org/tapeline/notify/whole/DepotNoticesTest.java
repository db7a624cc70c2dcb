package org.tapeline.notify.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.staff.WhenRestockHasWaitedThenTellDepot;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.Counts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("What a depot is told of restock requests, with real servers")
class DepotNoticesTest {
  private static final String COMMON = "depot@larkfield.example.org";
  private static final String MAIN = "main@larkfield.example.org";
  private static final String SOMEDAY = "2036-05-02T15:00:00Z";
  private static final Duration SOON = Duration.ofSeconds(20);
  private static final Duration LONG = Duration.ofHours(1);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject WhenRestockHasWaitedThenTellDepot waiting;
  @Inject DataSource database;
  @Inject Transactions transactions;

  private Peers peers;
  private Event last;
  private final Map<String, Integer> before = new HashMap<>();

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
    waiting.look(Instant.now().plus(LONG));
    Stream.of(COMMON, MAIN).forEach(depot -> before.put(depot, subjects(depot).size()));
  }

  @AfterEach
  void close() {
    peers.close();
  }

  @Test
  @DisplayName("is one mail for what comes together, as it stands then, without what was cancelled")
  void together() {
    Restock jaw = new Restock("MAIN", SOMEDAY);
    Restock front = new Restock("MAIN", "front-pad-25mm", SOMEDAY);
    Restock needless = new Restock("MAIN", "jaw-pad-20mm", SOMEDAY);
    publish(jaw.requested(1, 2));
    publish(front.requested(1, 4));
    publish(needless.requested(1, 8));
    publish(jaw.requested(2, 6));
    publish(needless.cancelled(2));
    afterTheWindow();
    toldSince(MAIN, "Reposición: 2 pedidos");
    assertThat(newest(MAIN))
        .contains("Pedidos nuevos", "- 6 x jaw pad 15mm", "- 4 x ")
        .doesNotContain("20mm", "Cambiados");

    publish(jaw.requested(3, 7));
    publish(front.requested(2, 5));
    publish(jaw.requested(4, 6));
    afterTheWindow();
    await().atMost(SOON).until(() -> since(MAIN).size() == 2);
    assertThat(since(MAIN).getLast()).startsWith("Cambio: ahora 5 x ");
  }

  @Test
  @DisplayName("stays a short mail when hundreds are asked for")
  void hundreds() {
    Stream.generate(() -> new Restock("MAIN", SOMEDAY))
        .limit(130)
        .forEach(restock -> publish(restock.requested(1, 1)));
    afterTheWindow();
    toldSince(MAIN, "Reposición: 130 pedidos");
    assertThat(newest(MAIN).lines().filter(line -> line.startsWith("- ")))
        .hasSize(26)
        .last()
        .isEqualTo("- Y 105 más");
  }

  @Test
  @DisplayName("is the amount that holds, also when it changes while another is told")
  void changesWhileTold() {
    Restock restock = new Restock("RIVER", SOMEDAY);
    publish(restock.requested(1, 2));
    afterTheWindow();
    toldSince(COMMON, "Restock: 2 x jaw pad 15mm for NORTH");
    publish(restock.requested(2, 5));
    heard();
    CompletableFuture<Void> telling = tellWhileItIsBack(restock);
    await().atMost(SOON).until(telling::isDone);
    afterTheWindow();
    toldSince(
        COMMON,
        "Restock: 2 x jaw pad 15mm for NORTH",
        "Changed: now 5 x jaw pad 15mm for NORTH",
        "Changed: now 2 x jaw pad 15mm for NORTH");
  }

  /** Telling cannot end before the event that says the first amount again has been read. */
  private CompletableFuture<Void> tellWhileItIsBack(Restock restock) {
    return transactions.required(
        connection -> {
          try (Statement lock = connection.createStatement()) {
            lock.execute(
                "select 1 from restock_told where request = '" + restock.request + "' for update");
          }
          CompletableFuture<Void> telling =
              CompletableFuture.runAsync(() -> waiting.look(Instant.now().plus(LONG)));
          waitsFor("insert into restock_told");
          publish(restock.requested(3, 2));
          waitsFor("insert into depot_matter");
          return telling;
        });
  }

  private void waitsFor(String statement) {
    await()
        .atMost(SOON)
        .until(
            () ->
                new Counts(database)
                        .of(
                            "select count(*) from pg_stat_activity where wait_event_type = 'Lock'"
                                + " and datname = current_database() and query like '"
                                + statement
                                + "%'")
                    == 1);
  }

  /** Once all that was published has been heard, and has waited. */
  private void afterTheWindow() {
    heard();
    waiting.look(Instant.now().plus(LONG));
  }

  private void heard() {
    await()
        .atMost(SOON)
        .until(
            () ->
                last == null
                    || new Counts(database)
                            .of(
                                "select count(*) from heard_event where event = '"
                                    + last.id()
                                    + "'")
                        == 1);
  }

  private void toldSince(String address, String... subjects) {
    await().atMost(SOON).until(() -> since(address), List.of(subjects)::equals);
  }

  private List<String> since(String address) {
    return subjects(address).stream().skip(before.get(address)).toList();
  }

  /** Without the mails of a day; the field's name may be known from an earlier test. */
  private static List<String> subjects(String address) {
    return SmtpServer.to(address).stream()
        .map(mail -> ReceivedMail.of(mail).subject().replace("North Field", "NORTH"))
        .filter(subject -> !subject.matches("(Restock|Reposición), .*"))
        .toList();
  }

  private static String newest(String address) {
    return ReceivedMail.of(SmtpServer.to(address).getLast()).plain();
  }

  private void publish(Event event) {
    UUID correlation = UuidV7.next();
    peers.send(event, correlation).send(event, correlation);
    last = event;
  }
}
