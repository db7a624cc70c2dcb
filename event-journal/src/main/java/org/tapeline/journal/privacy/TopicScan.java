package org.tapeline.journal.privacy;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.header.Header;
import org.tapeline.journal.kafka.KafkaClients;

/** Looks at every record of a topic: key, headers and value. */
final class TopicScan {
  private static final Duration POLL = Duration.ofSeconds(1);
  private final KafkaClients kafka;

  TopicScan(KafkaClients kafka) {
    this.kafka = kafka;
  }

  /** All topics but the broker's own. */
  Set<String> topics() {
    try (Admin admin = kafka.admin()) {
      return new TreeSet<>(admin.listTopics().names().get());
    } catch (ExecutionException e) {
      throw new IllegalStateException("The broker does not tell its topics", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** The number of records that were looked at. */
  long run(String topic, PersonalWords words, Findings findings) {
    long looked = 0;
    try (Consumer<String, byte[]> consumer = kafka.consumer("privacy-" + UUID.randomUUID())) {
      List<TopicPartition> partitions =
          consumer.partitionsFor(topic).stream()
              .map(p -> new TopicPartition(topic, p.partition()))
              .toList();
      consumer.assign(partitions);
      consumer.seekToBeginning(partitions);
      Map<TopicPartition, Long> ends = consumer.endOffsets(partitions);
      while (ends.entrySet().stream().anyMatch(e -> consumer.position(e.getKey()) < e.getValue())) {
        for (ConsumerRecord<String, byte[]> record : consumer.poll(POLL)) {
          looked++;
          String place = "topic " + topic + "-" + record.partition() + " @" + record.offset();
          findings.at(place, words.in(text(record)));
        }
      }
    }
    return looked;
  }

  private static String text(ConsumerRecord<String, byte[]> record) {
    StringBuilder text = new StringBuilder().append(record.key()).append('\n');
    for (Header header : record.headers()) {
      text.append(header.key()).append(' ').append(utf8(header.value())).append('\n');
    }
    return text.append(utf8(record.value())).toString();
  }

  private static String utf8(byte[] bytes) {
    return bytes == null ? "" : new String(bytes, StandardCharsets.UTF_8);
  }
}
