package org.tapeline.notify.whole;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.apache.kafka.common.serialization.StringSerializer;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.EventContracts;

/**
 * Publishes as the peer services do: CloudEvents 1.0 in Kafka's binary mode, and nothing that their
 * contracts do not allow.
 */
final class Peers implements AutoCloseable {
  private static final EventContracts CONTRACTS = EventContracts.load();

  private final KafkaProducer<String, byte[]> producer;

  Peers(String bootstrapServers) {
    this.producer =
        new KafkaProducer<>(
            Map.of("bootstrap.servers", bootstrapServers, "acks", "all"),
            new StringSerializer(),
            new ByteArraySerializer());
  }

  /**
   * One event, to be sent as often as wanted.
   *
   * @param data the content; {@code null} for a tombstone
   */
  record Event(
      String topic, String type, String stream, long version, String key, UUID id, Object data) {

    static Event of(
        String topic, String type, String stream, long version, Object key, Object data) {
      return new Event(topic, type, stream, version, key.toString(), UuidV7.next(), data);
    }
  }

  Peers send(Event event, UUID correlationId) {
    if (event.data() != null && CONTRACTS.knows(event.type())) {
      CONTRACTS.validateProduced(event.type(), EventJson.MAPPER.valueToTree(event.data()));
    }
    ProducerRecord<String, byte[]> sent =
        new ProducerRecord<>(event.topic(), event.key(), bytes(event.data()));
    Map<String, String> headers =
        Map.of(
            "ce_specversion", "1.0",
            "ce_id", event.id().toString(),
            "ce_source", "/peers",
            "ce_type", event.type(),
            "ce_time", Instant.now().toString(),
            "ce_subject", event.stream(),
            "ce_correlationid", correlationId.toString(),
            "ce_causationid", correlationId.toString(),
            "ce_streamversion", Long.toString(event.version()),
            "content-type", "application/json");
    headers.forEach(
        (name, value) -> sent.headers().add(name, value.getBytes(StandardCharsets.UTF_8)));
    producer.send(sent);
    producer.flush();
    return this;
  }

  private static byte[] bytes(Object data) {
    try {
      return data == null ? null : EventJson.MAPPER.writeValueAsBytes(data);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  @Override
  public void close() {
    producer.close();
  }
}
