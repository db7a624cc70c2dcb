package org.tapeline.journal.backlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.state.PostgresCurrentState;

@Tag("servers")
@Tag("containers")
@DisplayName("The backlog")
class BacklogsTest {
  private final JournalFixture on = new JournalFixture();
  private final Backlogs backlogs = new Backlogs(on.transactions);

  @AfterEach
  void close() {
    on.close();
  }

  @Test
  @DisplayName("is empty where nothing waits")
  void nothing() {
    assertThat(backlogs.now()).isEqualTo(new Backlog(0, empty(), Map.of(), empty()));
  }

  @Test
  @DisplayName("counts what has not been sent, since when, and no more once it was")
  void unsent() {
    Instant before = Instant.now().minusMillis(1);
    on.append("s", 0, 1);
    Instant after = Instant.now();
    on.append("s", 1, 2);
    new PostgresCurrentState(on.transactions, Clock.systemUTC(), () -> {})
        .put(on.topic, JournalFixture.COUNTED, "k", new Counted("k", 1));
    Backlog waiting = backlogs.now();
    assertThat(waiting.unsent()).isEqualTo(3);
    assertThat(waiting.oldestUnsent().orElseThrow()).isBetween(before, after);

    on.relay().start();
    await().atMost(SOON).until(() -> backlogs.now().unsent() == 0);
    assertThat(backlogs.now().oldestUnsent()).isEmpty();
  }

  @Test
  @DisplayName("counts what is parked, and what waits behind it")
  void parked() {
    on.append("s", 0, 1);
    on.append("s", 1, 2);
    on.relay().start();
    Instant before = Instant.now();
    on.consumer(Subscription.named("knows-nothing").events(on.topic)).start();
    await().atMost(SOON).until(() -> backlogs.now().parkedInAll() == 2);
    assertThat(backlogs.now().parked()).isEqualTo(Map.of(on.topic, 2L));
    assertThat(backlogs.now().oldestParked().orElseThrow()).isAfter(before);
  }

  private static Optional<Instant> empty() {
    return Optional.empty();
  }
}
