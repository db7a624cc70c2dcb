package org.tapeline.notify.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
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
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.Transactions;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.TestServers;

/** The other copy, or the other reader, is played by a transaction that the test holds open. */
@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@Tag("containers")
@DisplayName("A guardian and a case that are read at the same time")
class PeopleMeetCasesTest {
  private static final String SATURDAY = "2035-09-15T15:00:00Z";
  private static final Duration SOON = Duration.ofSeconds(30);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Subscription subscription;
  @Inject Transactions transactions;

  private final String rosa = "rosa." + UUID.randomUUID() + "@families.example.org";
  private final String tom = "tom." + UUID.randomUUID() + "@families.example.org";
  private final Family family = new Family("Mia").guardian("es", rosa).guardian("en", tom);
  private final Refit refit = new Refit(family.player);
  private final ExecutorService other = Executors.newSingleThreadExecutor();
  private final CountDownLatch read = new CountDownLatch(1);
  private final CountDownLatch mayCommit = new CountDownLatch(1);
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    mayCommit.countDown();
    other.close();
    peers.close();
  }

  @Test
  @DisplayName("meet, though the guardian is committed last")
  void guardianLast() throws Exception {
    Event toms = family.details().getLast();
    Future<?> held = readAndHold(List.of(toms));
    peers.sendAll(family.details().subList(0, 2));
    peers.sendAll(List.of(refit.opened(1), refit.booked(2, SATURDAY)));
    told(rosa);
    assertThat(SmtpServer.to(tom)).isEmpty();
    commit(held);
    told(tom);
    assertThat(SmtpServer.to(rosa)).hasSize(1);
  }

  @Test
  @DisplayName("meet, though the case is committed last")
  void caseLast() throws Exception {
    family.details().subList(0, 2).forEach(this::readAndCommit);
    Future<?> held = readAndHold(List.of(refit.opened(1), refit.booked(2, SATURDAY)));
    readAndCommit(family.details().getLast());
    // Told when its wait for a date is over: by then the service has looked again for some rounds.
    Family next = new Family("Ana").guardian("en", "ana." + tom);
    next.details().forEach(this::readAndCommit);
    peers.sendAll(List.of(new Refit(next.player).opened(1)));
    told("ana." + tom);
    assertThat(SmtpServer.to(rosa)).isEmpty();
    commit(held);
    told(rosa);
    told(tom);
  }

  private static void told(String address) {
    await().atMost(SOON).untilAsserted(() -> assertThat(SmtpServer.to(address)).hasSize(1));
  }

  private void readAndCommit(Event event) {
    transactions.required(
        connection -> {
          subscription.handle(received(event));
          return null;
        });
  }

  private Future<?> readAndHold(List<Event> events) throws InterruptedException {
    Future<?> held =
        other.submit(
            () ->
                transactions.required(
                    connection -> {
                      events.forEach(event -> subscription.handle(received(event)));
                      read.countDown();
                      return reached(mayCommit);
                    }));
    assertThat(reached(read)).isTrue();
    return held;
  }

  private void commit(Future<?> held) throws Exception {
    mayCommit.countDown();
    held.get(SOON.toSeconds(), TimeUnit.SECONDS);
  }

  private static boolean reached(CountDownLatch latch) {
    try {
      return latch.await(SOON.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ReceivedEvent received(Event event) {
    return new ReceivedEvent(
        event.topic(),
        event.id(),
        event.type(),
        event.stream(),
        event.version(),
        event.key(),
        Instant.now(),
        event.id(),
        event.id(),
        event.data());
  }
}
