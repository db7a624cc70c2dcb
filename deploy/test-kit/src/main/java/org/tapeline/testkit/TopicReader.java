package org.tapeline.testkit;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.header.Header;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.apache.kafka.common.serialization.StringDeserializer;
import org.tapeline.testkit.TestKafka.Message;

/** Reads topics from their first record on, each record once. For one thread. */
final class TopicReader implements AutoCloseable {
  private static final Duration POLL = Duration.ofMillis(100);

  private final KafkaConsumer<String, byte[]> consumer;

  /** What was read so far, by topic. */
  private final Map<String, List<Message>> logs = new HashMap<>();

  TopicReader(String bootstrapServers) {
    consumer =
        new KafkaConsumer<>(
            Map.of("bootstrap.servers", bootstrapServers, "auto.offset.reset", "earliest"),
            new StringDeserializer(),
            new ByteArrayDeserializer());
  }

  /**
   * Those of the kind, from the first record on, at least all that the topic holds when it is
   * asked; fewer than wanted when the time is over.
   */
  List<Message> await(String topic, int wanted, Duration atMost, Predicate<Message> kind) {
    List<Message> found = new ArrayList<>(upToNow(topic, kind));
    List<Message> read = log(topic);
    long end = System.nanoTime() + atMost.toNanos();
    while (found.size() < wanted && System.nanoTime() < end) {
      int known = read.size();
      readOn();
      read.subList(known, read.size()).stream().filter(kind).forEach(found::add);
    }
    return found;
  }

  /** Those of the kind that the topic holds when it is asked. */
  List<Message> upToNow(String topic, Predicate<Message> kind) {
    List<Message> read = log(topic);
    Map<TopicPartition, Long> ends =
        consumer.endOffsets(
            consumer.assignment().stream().filter(p -> p.topic().equals(topic)).toList());
    while (ends.entrySet().stream().anyMatch(e -> consumer.position(e.getKey()) < e.getValue())) {
      readOn();
    }
    return read.stream().filter(kind).toList();
  }

  private void readOn() {
    consumer.poll(POLL).forEach(record -> logs.get(record.topic()).add(message(record)));
  }

  private List<Message> log(String topic) {
    if (!logs.containsKey(topic)) {
      logs.put(topic, new ArrayList<>());
      List<TopicPartition> added =
          consumer.partitionsFor(topic).stream()
              .map(p -> new TopicPartition(topic, p.partition()))
              .toList();
      Set<TopicPartition> all = new HashSet<>(consumer.assignment());
      all.addAll(added);
      consumer.assign(all);
      consumer.seekToBeginning(added);
    }
    return logs.get(topic);
  }

  private static Message message(ConsumerRecord<String, byte[]> record) {
    Map<String, String> headers = new LinkedHashMap<>();
    for (Header header : record.headers()) {
      headers.put(header.key(), new String(header.value(), StandardCharsets.UTF_8));
    }
    return new Message(record.topic(), record.key(), headers, record.value());
  }

  @Override
  public void close() {
    consumer.close();
  }
}
