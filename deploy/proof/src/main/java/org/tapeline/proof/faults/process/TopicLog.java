package org.tapeline.proof.faults.process;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.apache.kafka.common.serialization.StringDeserializer;

/** The records of a topic from the first to the one that is the last now. */
public final class TopicLog {
  public static final List<String> TOPICS =
      List.of("people", "sizing.events", "fitting.events", "inventory.events", "notify.events");
  private static final Duration POLL = Duration.ofMillis(200);

  private TopicLog() {}

  /**
   * In the order of each partition.
   *
   * @return whether the end was reached in that time
   */
  public static boolean read(
      String broker,
      String topic,
      Duration atMost,
      Consumer<ConsumerRecord<String, byte[]>> reader) {
    Map<String, Object> settings =
        Map.of("bootstrap.servers", broker, "default.api.timeout.ms", 8000);
    Instant until = Instant.now().plus(atMost);
    try (KafkaConsumer<String, byte[]> consumer =
        new KafkaConsumer<>(settings, new StringDeserializer(), new ByteArrayDeserializer())) {
      List<TopicPartition> partitions =
          consumer.partitionsFor(topic).stream()
              .map(p -> new TopicPartition(topic, p.partition()))
              .toList();
      consumer.assign(partitions);
      consumer.seekToBeginning(partitions);
      Map<TopicPartition, Long> ends = consumer.endOffsets(partitions);
      while (behind(consumer, ends)) {
        if (Instant.now().isAfter(until)) {
          return false;
        }
        consumer.poll(POLL).forEach(reader);
      }
    }
    return true;
  }

  private static boolean behind(
      KafkaConsumer<String, byte[]> consumer, Map<TopicPartition, Long> ends) {
    return ends.entrySet().stream().anyMatch(e -> consumer.position(e.getKey()) < e.getValue());
  }
}
