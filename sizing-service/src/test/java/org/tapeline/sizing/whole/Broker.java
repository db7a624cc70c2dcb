package org.tapeline.sizing.whole;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.apache.kafka.common.serialization.StringDeserializer;
import org.tapeline.journal.EventJson;

/** The broker as a peer service sees it: reads everything on a topic. */
final class Broker implements AutoCloseable {
  private final KafkaConsumer<String, byte[]> consumer;

  Broker(String bootstrapServers) {
    this.consumer =
        new KafkaConsumer<>(
            Map.of("bootstrap.servers", bootstrapServers),
            new StringDeserializer(),
            new ByteArrayDeserializer());
  }

  /**
   * What stands on a topic.
   *
   * @param data {@code null} for a tombstone
   */
  record Message(String type, String stream, String key, String correlationId, JsonNode data) {
    private static Message of(ConsumerRecord<String, byte[]> found) {
      return new Message(
          header(found, "ce_type"),
          header(found, "ce_subject"),
          found.key(),
          header(found, "ce_correlationid"),
          found.value() == null ? null : json(found.value()));
    }

    boolean is(String event) {
      return type.equals("org.tapeline.sizing." + event + ".v1");
    }

    private static String header(ConsumerRecord<String, byte[]> found, String name) {
      return new String(found.headers().lastHeader(name).value(), StandardCharsets.UTF_8);
    }

    private static JsonNode json(byte[] value) {
      try {
        return EventJson.MAPPER.readTree(value);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** Everything on the topic up to now, in the order of its partitions. */
  List<Message> all(String topic) {
    List<TopicPartition> partitions =
        consumer.partitionsFor(topic).stream()
            .map(p -> new TopicPartition(topic, p.partition()))
            .toList();
    consumer.assign(partitions);
    consumer.seekToBeginning(partitions);
    Map<TopicPartition, Long> ends = consumer.endOffsets(partitions);
    List<Message> messages = new ArrayList<>();
    while (partitions.stream().anyMatch(p -> consumer.position(p) < ends.get(p))) {
      consumer.poll(Duration.ofMillis(200)).forEach(found -> messages.add(Message.of(found)));
    }
    return messages;
  }

  /** The messages of one key, in their order. */
  List<Message> ofKey(String topic, Object key) {
    return all(topic).stream().filter(m -> m.key().equals(key.toString())).toList();
  }

  @Override
  public void close() {
    consumer.close();
  }
}
