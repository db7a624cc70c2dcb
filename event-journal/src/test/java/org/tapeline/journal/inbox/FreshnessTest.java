package org.tapeline.journal.inbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.kafka.Topics;
import org.tapeline.journal.relay.Relay;

@Tag("servers")
@Tag("containers")
@DisplayName("The picture of a peer")
class FreshnessTest {
  private JournalFixture peer;
  private PeerHeartbeats heartbeats;
  private FreshnessProbe picture;

  @BeforeEach
  void aReader() {
    peer = new JournalFixture();
    Subscription reads =
        Subscription.named("reader").events(peer.topic).ignoring(JournalFixture.COUNTED);
    peer.consumer(reads).start();
    heartbeats = peer.heartbeats().start();
    picture =
        peer.running(
            new FreshnessProbe(
                peer.kafka::admin,
                "group-" + peer.topic,
                Set.of(peer.topic),
                heartbeats::allSentAt,
                Clock.systemUTC()));
    picture.start();
  }

  @AfterEach
  void close() {
    peer.close();
  }

  private void knownAfter(Instant moment) {
    await().atMost(SOON).until(() -> picture.caughtUpAt().filter(moment::isBefore).isPresent());
  }

  @Test
  @DisplayName("is not fresh while the peer's relay is silent, though all of Kafka was read")
  void silent() {
    await().atMost(SOON).until(picture::wasLevel);
    assertThat(picture.caughtUpAt()).isEmpty();
  }

  @Test
  @DisplayName("is fresh while the peer's relay beats, and goes on when it comes back")
  void comesBack() {
    Relay relay = peer.relay().start();
    knownAfter(Instant.now());

    relay.close();
    peer.append("s", 0, 0);
    Instant lagging = Instant.now();
    Instant last = heartbeats.allSentAt().orElseThrow();
    assertThat(last).isBefore(lagging);
    // A level reading after the relay's end changes nothing.
    await()
        .during(Duration.ofSeconds(3))
        .atMost(SOON)
        .until(() -> !picture.caughtUpAt().orElseThrow().isAfter(lagging));

    peer.relay().start();
    knownAfter(lagging);
    assertThat(peer.number("select count(*) from journal_unsent")).isZero();
  }

  @Test
  @DisplayName("is not made fresher by a beat that cannot be read or an older one that comes late")
  void oddBeats() {
    Instant newest = Instant.parse("2026-08-20T10:00:00Z");
    try (Producer<String, byte[]> producer = peer.kafka.producer()) {
      for (String beat : new String[] {newest.toString(), "now", "2026-08-20T09:00:00Z"}) {
        producer.send(
            new ProducerRecord<>(
                Topics.HEARTBEATS, peer.service, beat.getBytes(StandardCharsets.UTF_8)));
      }
      producer.flush();
    }
    await().atMost(SOON).until(() -> heartbeats.allSentAt().isPresent());
    knownAfter(newest.minusSeconds(1));
    assertThat(heartbeats.allSentAt()).contains(newest);
    assertThat(picture.caughtUpAt()).contains(newest);
  }

  @Test
  @DisplayName("says of each topic how many records are not applied yet")
  void behind() {
    FreshnessProbe ofNobody =
        peer.running(
            new FreshnessProbe(
                peer.kafka::admin,
                "reads-nothing",
                Set.of(peer.topic),
                heartbeats::allSentAt,
                Clock.systemUTC()));
    ofNobody.start();
    peer.append("s", 0, 1);
    peer.append("s", 1, 2);
    peer.append("t", 0, 3);
    peer.relay().start();
    await()
        .atMost(SOON)
        .untilAsserted(() -> assertThat(ofNobody.behind()).isEqualTo(Map.of(peer.topic, 3L)));
    assertThat(ofNobody.wasLevel()).isFalse();
    await()
        .atMost(SOON)
        .untilAsserted(() -> assertThat(picture.behind()).isEqualTo(Map.of(peer.topic, 0L)));
  }
}
