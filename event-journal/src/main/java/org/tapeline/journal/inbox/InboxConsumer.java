package org.tapeline.journal.inbox;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.consumer.ConsumerRecords;
import org.apache.kafka.common.TopicPartition;
import org.apache.kafka.common.errors.WakeupException;

/**
 * Reads the subscribed topics and gives their records to the inbox. Kafka's offsets are moved on
 * after the inbox has committed: they only say where to go on reading, what has been applied stands
 * in the database.
 */
public final class InboxConsumer implements AutoCloseable {
  private static final Logger LOG = System.getLogger(InboxConsumer.class.getName());
  private static final Duration POLL = Duration.ofMillis(250);
  private static final Duration AFTER_FAILURE = Duration.ofMillis(500);

  private final Supplier<Consumer<String, byte[]>> consumers;
  private final Set<String> topics;
  private final Inbox inbox;
  private final CountDownLatch stopping = new CountDownLatch(1);
  private final Thread thread;
  private volatile boolean running = true;
  private volatile Consumer<String, byte[]> current;

  /**
   * @param consumers makes a consumer that does not commit offsets by itself
   */
  public InboxConsumer(
      Supplier<Consumer<String, byte[]>> consumers, Set<String> topics, Inbox inbox) {
    this.consumers = consumers;
    this.topics = topics;
    this.inbox = inbox;
    this.thread = Thread.ofPlatform().name("journal-inbox").daemon().unstarted(this::run);
  }

  public InboxConsumer start() {
    thread.start();
    return this;
  }

  public boolean alive() {
    return thread.isAlive();
  }

  private void run() {
    while (running) {
      try (Consumer<String, byte[]> consumer = consumers.get()) {
        current = consumer;
        consumer.subscribe(topics);
        while (running) {
          poll(consumer);
        }
      } catch (WakeupException e) {
        LOG.log(Level.DEBUG, "Asked to stop");
      } catch (RuntimeException e) {
        LOG.log(Level.WARNING, "Reading stopped and will go on: {0}", e.toString());
        pause();
      }
    }
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
      pause();
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

  private void pause() {
    try {
      stopping.await(AFTER_FAILURE.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      running = false;
    }
  }

  @Override
  public void close() {
    running = false;
    stopping.countDown();
    Consumer<String, byte[]> consumer = current;
    if (consumer != null) {
      consumer.wakeup();
    }
    try {
      thread.join(Duration.ofSeconds(10));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
