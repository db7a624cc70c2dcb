package org.tapeline.journal.relay;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.RecordMetadata;
import org.tapeline.journal.watch.JournalWatch;

/**
 * Sends what is unsent to Kafka, in order. Of all relays on one database exactly one leads: the one
 * whose connection holds an advisory lock. It reads and takes its notes on that same connection, so
 * that a relay that has lost the lock cannot go on. At the first record that Kafka refuses it stops
 * and later goes on from there; what had been sent after that record is sent again, and consumers
 * know a repeat by its stream version.
 */
public final class Relay implements AutoCloseable {
  private static final Logger LOG = System.getLogger(Relay.class.getName());
  private static final long LOCK = 0x7461_7065_6c69_6e65L;
  private static final Duration SHORTEST_WAIT = Duration.ofMillis(10);
  private static final Duration LONGEST_WAIT = Duration.ofMillis(500);
  private static final Duration AFTER_FAILURE = Duration.ofSeconds(1);
  private static final int BATCH = 500;

  private final DataSource dedicated;
  private final Supplier<Producer<String, byte[]>> producers;
  private final List<Unsent> sources;
  private final Heartbeat heartbeat;
  private final JournalWatch watch;
  private final Semaphore bell = new Semaphore(0);
  private final CountDownLatch stopping = new CountDownLatch(1);
  private final Thread thread;
  private volatile boolean running = true;
  private volatile boolean leading;

  /**
   * @param dedicated gives connections outside of any pool: a lock must not outlive its holder
   * @param producers makes a fresh producer, also after a failure: closing the old one drops what
   *     it still held, so that nothing overtakes the failed record
   * @param topic where the journal's events go
   * @param heartbeat says how far it has come
   */
  public Relay(
      DataSource dedicated,
      Supplier<Producer<String, byte[]>> producers,
      String topic,
      Heartbeat heartbeat) {
    this(dedicated, producers, topic, heartbeat, JournalWatch.NONE);
  }

  public Relay(
      DataSource dedicated,
      Supplier<Producer<String, byte[]>> producers,
      String topic,
      Heartbeat heartbeat,
      JournalWatch watch) {
    this.watch = watch;
    this.dedicated = dedicated;
    this.heartbeat = heartbeat;
    this.producers = producers;
    // State first: who hears of a player's enrolment should find the player's details.
    this.sources = List.of(new UnsentState(), new UnsentEvents(topic));
    this.thread = Thread.ofPlatform().name("journal-relay").daemon().unstarted(this::run);
  }

  public Relay start() {
    thread.start();
    return this;
  }

  /** Tells the relay that something was committed. Cheap, from any thread. */
  public void wake() {
    if (bell.availablePermits() == 0) {
      bell.release();
    }
  }

  public boolean leading() {
    return leading;
  }

  /** Whether it runs, leading or waiting to lead; it does until it is closed. */
  public boolean alive() {
    return thread.getState() != Thread.State.TERMINATED;
  }

  private void run() {
    while (running) {
      try (Connection connection = dedicated.getConnection()) {
        if (takeLead(connection)) {
          leading = true;
          lead(connection);
        }
      } catch (SQLException | RuntimeException e) {
        LOG.log(Level.WARNING, "The relay stopped and will go on: {0}", e.toString());
      } finally {
        leading = false;
      }
      pause(AFTER_FAILURE);
    }
  }

  private static boolean takeLead(Connection connection) throws SQLException {
    try (PreparedStatement lock = connection.prepareStatement("select pg_try_advisory_lock(?)")) {
      lock.setLong(1, LOCK);
      try (ResultSet row = lock.executeQuery()) {
        return row.next() && row.getBoolean(1);
      }
    }
  }

  private void lead(Connection connection) throws SQLException {
    Producer<String, byte[]> producer = producers.get();
    try {
      Duration wait = SHORTEST_WAIT;
      while (running) {
        boolean sentSome = pass(connection, producer);
        if (sentSome) {
          wait = SHORTEST_WAIT;
        } else if (ring(wait)) {
          wait = SHORTEST_WAIT;
        } else {
          wait = min(wait.multipliedBy(2), LONGEST_WAIT);
        }
      }
    } finally {
      producer.close(Duration.ZERO);
    }
  }

  /**
   * One round through all sources; true when something was sent. Where none had more than it was
   * asked for, everything that was committed before the round is in Kafka now.
   */
  private boolean pass(Connection connection, Producer<String, byte[]> producer)
      throws SQLException {
    Instant before = heartbeat.now();
    int sent = 0;
    int most = 0;
    for (Unsent source : sources) {
      int batch = sendFrom(source, connection, producer);
      sent += batch;
      most = Math.max(most, batch);
    }
    if (most < BATCH) {
      heartbeat.beat(producer, before);
    }
    return sent > 0;
  }

  /** How many were sent. Throws at a failed send, after noting what went before it. */
  private int sendFrom(Unsent source, Connection connection, Producer<String, byte[]> producer)
      throws SQLException {
    List<Unsent.Entry> batch = source.next(connection, BATCH);
    if (batch.isEmpty()) {
      return 0;
    }
    List<Future<RecordMetadata>> sends = send(batch, producer);
    producer.flush();
    int arrived = 0;
    try {
      for (Future<RecordMetadata> send : sends) {
        send.get();
        arrived++;
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException("Kafka refused a record: " + e.getCause(), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    } finally {
      if (arrived > 0) {
        source.sent(connection, batch.subList(0, arrived));
        watch.published(batch.subList(0, arrived).stream().map(Unsent.Entry::record).toList());
      }
    }
    return batch.size();
  }

  /**
   * As many as are not refused at once: with a broker that comes back at that very moment, the next
   * record would be taken and overtake the refused one.
   */
  private static List<Future<RecordMetadata>> send(
      List<Unsent.Entry> batch, Producer<String, byte[]> producer) {
    List<Future<RecordMetadata>> sends = new ArrayList<>();
    for (Unsent.Entry entry : batch) {
      Future<RecordMetadata> sent = producer.send(entry.record());
      sends.add(sent);
      if (sent.state() == Future.State.FAILED) {
        break;
      }
    }
    return sends;
  }

  private boolean ring(Duration wait) {
    try {
      return bell.tryAcquire(wait.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      running = false;
      return false;
    }
  }

  /** Deaf to the bell: a relay that does not lead must not ask for the lock at every commit. */
  private void pause(Duration time) {
    try {
      stopping.await(time.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      running = false;
    }
  }

  private static Duration min(Duration a, Duration b) {
    return a.compareTo(b) < 0 ? a : b;
  }

  @Override
  public void close() {
    running = false;
    stopping.countDown();
    wake();
    try {
      thread.join(Duration.ofSeconds(5));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
