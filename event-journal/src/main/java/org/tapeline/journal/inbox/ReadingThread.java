package org.tapeline.journal.inbox;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.common.errors.WakeupException;

/** Reads from Kafka until it is closed: after a failure it goes on with a new consumer. */
final class ReadingThread implements AutoCloseable {
  private static final Logger LOG = System.getLogger(ReadingThread.class.getName());
  private static final Duration AFTER_FAILURE = Duration.ofMillis(500);

  /** Something that is done with the consumer. */
  interface Step {
    void with(Consumer<String, byte[]> consumer);
  }

  private final Supplier<Consumer<String, byte[]>> consumers;
  private final Step begin;
  private final Step read;
  private final CountDownLatch stopping = new CountDownLatch(1);
  private final Thread thread;
  private volatile boolean running = true;
  private volatile Consumer<String, byte[]> current;

  /**
   * @param begin tells a new consumer what to read
   * @param read one poll, and what is done with what came
   */
  ReadingThread(String name, Supplier<Consumer<String, byte[]>> consumers, Step begin, Step read) {
    this.consumers = consumers;
    this.begin = begin;
    this.read = read;
    this.thread = Thread.ofPlatform().name(name).daemon().unstarted(this::run);
  }

  void start() {
    thread.start();
  }

  /** Whether it reads, or is about to. */
  boolean alive() {
    return thread.getState() != Thread.State.TERMINATED;
  }

  private void run() {
    while (running) {
      try (Consumer<String, byte[]> consumer = consumers.get()) {
        current = consumer;
        begin.with(consumer);
        while (running) {
          read.with(consumer);
        }
      } catch (WakeupException e) {
        LOG.log(Level.DEBUG, "Asked to stop");
      } catch (RuntimeException e) {
        LOG.log(
            Level.WARNING,
            "{0}: reading stopped and will go on: {1}",
            thread.getName(),
            e.toString());
        pause();
      }
    }
  }

  /** A little while, or until it is closed. */
  void pause() {
    try {
      stopping.await(AFTER_FAILURE.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      running = false;
    }
  }

  /** Returns at once; {@link #close} waits. */
  void askToStop() {
    running = false;
    stopping.countDown();
    Consumer<String, byte[]> consumer = current;
    if (consumer != null) {
      consumer.wakeup();
    }
  }

  @Override
  public void close() {
    askToStop();
    try {
      thread.join(Duration.ofSeconds(10));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
