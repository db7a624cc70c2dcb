package org.tapeline.journal.inbox;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.ConsumerRecords;
import org.apache.kafka.common.TopicPartition;

/**
 * One of the threads that read the subscribed topics, with a consumer of its own. Kafka's offsets
 * are moved on after the inbox has committed: they only say where to go on reading, what has been
 * applied stands in the database.
 */
final class InboxReader implements AutoCloseable {
  private static final Logger LOG = System.getLogger(InboxReader.class.getName());
  private static final Duration POLL = Duration.ofMillis(250);

  private final Inbox inbox;
  private final ReadingThread thread;

  InboxReader(
      String name, Supplier<Consumer<String, byte[]>> consumers, Set<String> topics, Inbox inbox) {
    this.inbox = inbox;
    this.thread = new ReadingThread(name, consumers, c -> c.subscribe(topics), this::poll);
  }

  void start() {
    thread.start();
  }

  boolean alive() {
    return thread.alive();
  }

  void askToStop() {
    thread.askToStop();
  }

  private void poll(Consumer<String, byte[]> consumer) {
    ConsumerRecords<String, byte[]> records = consumer.poll(POLL);
    if (records.isEmpty()) {
      return;
    }
    List<Envelope> batch = new ArrayList<>(records.count());
    records.forEach(record -> batch.add(Envelope.of(record)));
    try {
      inbox.apply(batch);
    } catch (RuntimeException e) {
      LOG.log(Level.WARNING, "The database is out of reach, will try again: {0}", e.toString());
      goBack(consumer, records);
      thread.pause();
      return;
    }
    consumer.commitSync();
  }

  /** To the first record of the batch in each partition: nothing of it was lost or decided. */
  private static void goBack(
      Consumer<String, byte[]> consumer, ConsumerRecords<String, byte[]> records) {
    Map<TopicPartition, Long> first = new HashMap<>();
    for (ConsumerRecord<String, byte[]> record : records) {
      first.merge(
          new TopicPartition(record.topic(), record.partition()), record.offset(), Math::min);
    }
    first.forEach(consumer::seek);
  }

  @Override
  public void close() {
    thread.close();
  }
}
