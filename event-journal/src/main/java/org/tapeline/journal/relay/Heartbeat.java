package org.tapeline.journal.relay;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ExecutionException;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.tapeline.journal.kafka.Topics;

/**
 * Says now and then up to which moment everything that the service committed has reached Kafka, so
 * that readers notice a relay that lags or stands still: what it has not sent they cannot see.
 */
public final class Heartbeat {
  private final String service;
  private final Duration every;
  private final Clock clock;
  private Instant last = Instant.MIN;

  /**
   * @param every the least time between two
   */
  public Heartbeat(String service, Duration every, Clock clock) {
    this.service = service;
    this.every = every;
    this.clock = clock;
  }

  Instant now() {
    return clock.instant();
  }

  /**
   * Sends one when it is time.
   *
   * @param allSentAt everything that was committed by then is in Kafka
   * @throws IllegalStateException when Kafka refuses it
   */
  void beat(Producer<String, byte[]> producer, Instant allSentAt) {
    if (!last.equals(Instant.MIN) && allSentAt.isBefore(last.plus(every))) {
      return;
    }
    byte[] moment = allSentAt.toString().getBytes(StandardCharsets.UTF_8);
    try {
      producer.send(new ProducerRecord<>(Topics.HEARTBEATS, service, moment)).get();
      last = allSentAt;
    } catch (ExecutionException e) {
      throw new IllegalStateException("Kafka refused a heartbeat: " + e.getCause(), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }
}
