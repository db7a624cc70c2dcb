package org.tapeline.journal.quarkus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.inbox.Inbox;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.inbox.PeerHeartbeats;
import org.tapeline.journal.kafka.KafkaClients;
import org.tapeline.journal.relay.Heartbeat;
import org.tapeline.journal.relay.Relay;
import org.tapeline.servers.LocalKafka;
import org.tapeline.servers.Ports;

@Tag("servers")
@Tag("containers")
class StartWithoutBrokerTest {
  private static final String TOPIC = "late.events";

  private final JournalFixture on = new JournalFixture();
  private final Subscription reads =
      Subscription.named("late").events(TOPIC).ignoring(JournalFixture.COUNTED);
  private JournalLifecycle service;

  @TempDir Path folder;

  @AfterEach
  void close() {
    service.stop(null);
    on.close();
  }

  @Test
  @DisplayName(
      "A service starts while the broker is away, keeps what is entered, and sends it when it"
          + " comes")
  void startsAllTheSame() throws Exception {
    int port = Ports.free();
    JournalSettings settings = settings(port);
    KafkaClients kafka = settings.kafka();
    FreshnessProbe freshness = freshness(kafka);
    service = service(settings, kafka, freshness);
    service.start(null, new Serving(Optional.empty()));
    on.append("s", 0, 1);
    assertThat(on.number("select count(*) from journal_unsent")).isEqualTo(1);
    assertThat(freshness.wasLevel()).isFalse();

    try (LocalKafka broker = LocalKafka.keeping(folder, port, Ports.free())) {
      assertThat(broker.bootstrapServers()).contains(Integer.toString(port));
      await()
          .atMost(Duration.ofSeconds(60))
          .until(() -> on.number("select count(*) from journal_unsent") == 0);
      await().atMost(Duration.ofSeconds(60)).until(freshness::wasLevel);
      service.stop(null);
    }
  }

  private JournalSettings settings(int port) {
    JournalSettings settings = new JournalSettings(ConfigProvider.getConfig());
    settings.service = "late";
    settings.partitions = 1;
    settings.replication = 1;
    settings.heartbeat = Duration.ofMillis(200);
    settings.bootstrapServers = "127.0.0.1:" + port;
    settings.waitForBroker = Duration.ofMillis(100);
    return settings;
  }

  private JournalLifecycle service(
      JournalSettings settings, KafkaClients kafka, FreshnessProbe freshness) {
    Clock clock = Clock.systemUTC();
    Heartbeat heartbeat = new Heartbeat("late", settings.heartbeat, clock);
    Inbox inbox = new Inbox(on.transactions, reads, clock);
    return new JournalLifecycle(
        settings,
        reads,
        new Relay(on.relayConnections(), kafka::producer, TOPIC, heartbeat),
        new InboxConsumer(() -> kafka.consumer("late"), reads.topics(), inbox, 1),
        freshness,
        new PeerHeartbeats(() -> kafka.consumer("late-heartbeats"), Set.of("late")));
  }

  private FreshnessProbe freshness(KafkaClients kafka) {
    Set<String> topics = Set.of(TOPIC);
    return new FreshnessProbe(kafka::admin, "late", topics, Optional::empty, Clock.systemUTC());
  }
}
