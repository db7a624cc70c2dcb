package org.tapeline.notify.whole;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;

/** Publishes as the peer services do, and nothing that their contracts do not allow. */
final class Peers implements AutoCloseable {
  private static final EventContracts CONTRACTS = EventContracts.load();

  private final TestKafka kafka;

  Peers(String bootstrapServers) {
    this.kafka = new TestKafka(bootstrapServers);
  }

  /**
   * One event, to be sent as often as wanted.
   *
   * @param data the content; {@code null} for a tombstone
   */
  record Event(
      String topic, String type, String stream, long version, String key, UUID id, JsonNode data) {

    static Event of(
        String topic, String type, String stream, long version, Object key, Object data) {
      JsonNode json = data == null ? null : EventJson.MAPPER.valueToTree(data);
      if (json != null && CONTRACTS.knows(type)) {
        CONTRACTS.validateProduced(type, json);
      }
      return new Event(topic, type, stream, version, key.toString(), UuidV7.next(), json);
    }
  }

  Peers send(Event event, UUID correlationId) {
    kafka.publish(envelope(event, correlationId));
    return this;
  }

  /** Sends each twice, as after an acknowledgement that was lost. */
  Peers sendTwice(UUID correlationId, Event... events) {
    for (Event event : events) {
      send(event, correlationId).send(event, correlationId);
    }
    return this;
  }

  /** Sends them one behind the other, each a chain of its own. */
  Peers sendAll(List<Event> events) {
    kafka.publishAll(events.stream().map(event -> envelope(event, event.id())).toList());
    return this;
  }

  private static TestKafka.Envelope envelope(Event event, UUID correlationId) {
    return new TestKafka.Envelope(
        event.topic(),
        event.type(),
        event.stream(),
        event.version(),
        event.key(),
        event.id(),
        correlationId,
        correlationId,
        event.data());
  }

  @Override
  public void close() {
    kafka.close();
  }
}
