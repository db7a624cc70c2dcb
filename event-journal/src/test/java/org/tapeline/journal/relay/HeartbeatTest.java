package org.tapeline.journal.relay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.lang.reflect.Proxy;
import java.time.Instant;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.inbox.PeerHeartbeats;

@Tag("servers")
@Tag("containers")
@DisplayName("The heartbeat of a relay")
class HeartbeatTest {
  private JournalFixture on;
  private PeerHeartbeats heard;

  @BeforeEach
  void open() {
    on = new JournalFixture();
    heard = on.heartbeats().start();
  }

  @AfterEach
  void close() {
    on.close();
  }

  private void heardAfter(Instant moment) {
    await().atMost(SOON).until(() -> heard.allSentAt().filter(moment::isBefore).isPresent());
  }

  @Test
  @DisplayName("goes on while nothing happens, and says that what was committed before is in Kafka")
  void beats() {
    on.relay().start();
    heardAfter(Instant.now());
    on.append("s", 0, 0);
    heardAfter(Instant.now());
    assertThat(on.onTopic()).hasSize(1);
  }

  @Test
  @DisplayName("stops while Kafka refuses an event, though it would take the beat")
  void refused() {
    AtomicBoolean refuses = new AtomicBoolean(true);
    AtomicInteger refused = new AtomicInteger();
    on.append("s", 0, 0);
    on.relay(() -> refusing(on.kafka.producer(), refuses, refused)).start();
    await().atMost(SOON).until(() -> refused.get() >= 2);
    assertThat(heard.allSentAt()).isEmpty();

    refuses.set(false);
    heardAfter(Instant.now());
    assertThat(on.onTopic()).hasSize(1);
  }

  @SuppressWarnings("unchecked")
  private Producer<String, byte[]> refusing(
      Producer<String, byte[]> real, AtomicBoolean refuses, AtomicInteger refused) {
    return (Producer<String, byte[]>)
        Proxy.newProxyInstance(
            Producer.class.getClassLoader(),
            new Class<?>[] {Producer.class},
            (proxy, called, arguments) -> {
              boolean ours =
                  called.getName().equals("send")
                      && ((ProducerRecord<?, ?>) arguments[0]).topic().equals(on.topic);
              if (ours && refuses.get()) {
                refused.incrementAndGet();
                return CompletableFuture.failedFuture(new IllegalStateException("refused"));
              }
              return called.invoke(real, arguments);
            });
  }
}
