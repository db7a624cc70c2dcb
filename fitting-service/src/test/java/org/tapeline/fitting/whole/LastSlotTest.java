package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.refit.WhenReplacementKnownThenBook;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

/** Two copies of the service work at once, each on its own partitions: here two threads do. */
@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("The slots of a fit day, when two reach for them at once")
class LastSlotTest {
  private static final String DAY = LocalDate.now().plusDays(2).toString();
  private static final String WAITS_FOR_LOCK =
      "select count(*) from pg_locks where locktype = 'advisory' and not granted";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;
  @Inject WhenReplacementKnownThenBook reaction;

  private Subscription copy;
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
    copy = Subscription.named("copy");
    reaction.declareOn(copy);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private UUID caseAt(String field) {
    Person person = peers.arrives(field);
    UUID session = UUID.randomUUID();
    peers.send(
        peers.issued(person.tag(), person.player(), session),
        peers.quarantined(person.tag(), person.player()));
    return peers.refitOf(person.player());
  }

  private ReceivedEvent replacementFor(UUID refitCase) {
    Envelope e = peers.reserved(refitCase, UUID.randomUUID(), Person.next().tag(), "youth-medium");
    return new ReceivedEvent(
        e.topic(),
        e.id(),
        e.type(),
        e.stream(),
        e.version(),
        e.key(),
        Instant.now(),
        e.correlationId(),
        e.causationId(),
        e.data());
  }

  private static List<String> booked(String field) {
    return as("manager")
        .queryParam("field", field)
        .get("/api/refits")
        .jsonPath()
        .getList("findAll { it.booking != null }.refitCase");
  }

  @Test
  @DisplayName("the last one goes to exactly one case; the other waits for the next fit day")
  void lastSlot() throws Exception {
    String field = "LAST-SLOT";
    List<UUID> cases = List.of(caseAt(field), caseAt(field));
    Fitter fitter = new Fitter("manager", field);
    fitter.announces(DAY, "17:30", "17:45");
    CyclicBarrier together = new CyclicBarrier(2);
    try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
      List<Future<Void>> both =
          cases.stream()
              .map(this::replacementFor)
              .map(event -> threads.submit(() -> handle(event, together)))
              .toList();
      for (Future<Void> one : both) {
        one.get(30, TimeUnit.SECONDS);
      }
    }
    assertThat(booked(field)).hasSize(1).isSubsetOf(cases.stream().map(UUID::toString).toList());

    fitter.announces(LocalDate.now().plusDays(3).toString(), "17:30", "17:45");
    assertThat(booked(field))
        .containsExactlyInAnyOrderElementsOf(cases.stream().map(UUID::toString).toList());
  }

  private Void handle(ReceivedEvent event, CyclicBarrier together) throws Exception {
    together.await(30, TimeUnit.SECONDS);
    return transactions.required(
        connection -> {
          copy.handle(event);
          return null;
        });
  }

  @Test
  @DisplayName("a fit day that is announced while a replacement becomes known is not missed")
  void announcedMeanwhile() throws Exception {
    String field = "MEANWHILE";
    UUID refitCase = caseAt(field);
    ReceivedEvent event = replacementFor(refitCase);
    CountDownLatch looked = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
      try {
        Future<Void> reacts = threads.submit(() -> handleSlowly(event, looked, goOn));
        assertThat(looked.await(30, TimeUnit.SECONDS)).isTrue();
        Future<UUID> announces =
            threads.submit(() -> new Fitter("manager", field).announces(DAY, "17:30", "17:45"));
        await().atMost(PATIENCE).until(() -> announces.isDone() || waitsForLock());
        goOn.countDown();
        reacts.get(30, TimeUnit.SECONDS);
        announces.get(30, TimeUnit.SECONDS);
      } finally {
        goOn.countDown();
      }
    }
    assertThat(booked(field)).containsExactly(refitCase.toString());
  }

  /** Has looked for a slot and not yet committed. */
  private Void handleSlowly(ReceivedEvent event, CountDownLatch looked, CountDownLatch goOn) {
    return transactions.required(
        connection -> {
          copy.handle(event);
          looked.countDown();
          awaitQuietly(goOn);
          return null;
        });
  }

  private static void awaitQuietly(CountDownLatch latch) {
    try {
      latch.await(60, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private boolean waitsForLock() {
    return transactions.required(
        connection -> {
          try (PreparedStatement select = connection.prepareStatement(WAITS_FOR_LOCK);
              ResultSet row = select.executeQuery()) {
            return row.next() && row.getInt(1) > 0;
          }
        });
  }
}
