package org.tapeline.journal.bench;

import static org.awaitility.Awaitility.await;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.util.Set;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.inbox.Inbox;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.relay.Relay;

/** Events on their way: sent by the relay, applied by the inbox, and what limits each. */
final class Passing {
  private static final Duration PATIENCE = Duration.ofMinutes(5);
  private static final int BATCH = 100;
  private static final int READERS = 3;

  private final BenchJournal bench;
  private final String rawTopic;

  Passing(BenchJournal bench) throws SQLException {
    this.bench = bench;
    rawTopic = bench.on.topic + ".raw";
    bench.on.makeTopics(Set.of(rawTopic));
    bench.on.execute("create table effect (thing text not null, number integer not null)");
    bench.on.execute("create table raw_effect (like effect)");
  }

  /** The relay sends so many new events, and whatever else is unsent. */
  double relay(int events) {
    bench.add(events);
    return send();
  }

  private double send() {
    long unsent = bench.on.number("select count(*) from journal_unsent");
    long start = System.nanoTime();
    try (Relay relay = bench.on.relay()) {
      relay.start();
      awaitNone("select count(*) from journal_unsent");
      return Rate.of(unsent, start);
    }
  }

  /** The limit of the relay: a producer with the same promises that has nothing to look up. */
  double rawProducer(int events) {
    byte[] data =
        ("{\"thing\":\"" + UuidV7.next() + "\",\"number\":1}").getBytes(StandardCharsets.UTF_8);
    try (Producer<String, byte[]> producer = bench.on.kafka.producer()) {
      producer.partitionsFor(rawTopic);
      long start = System.nanoTime();
      for (int i = 0; i < events; i++) {
        producer.send(new ProducerRecord<>(rawTopic, null, "key-" + i, data));
      }
      producer.flush();
      return Rate.of(events, start);
    }
  }

  /** The inbox applies so many new events, and whatever else was sent: a row for each. */
  double inbox(int events) {
    bench.add(events);
    send();
    return apply();
  }

  private double apply() {
    long all = bench.size();
    long fresh = all - bench.on.number("select count(*) from effect");
    Subscription counting =
        Subscription.named("bench")
            .events(bench.on.topic)
            .on(JournalFixture.COUNTED, Counted.class, (counted, event) -> effect(counted));
    Inbox inbox = new Inbox(bench.transactions, counting, Clock.systemUTC());
    long start = System.nanoTime();
    try (InboxConsumer consumer =
        new InboxConsumer(
            () -> bench.on.kafka.consumer(bench.on.topic), counting.topics(), inbox, READERS)) {
      consumer.start();
      awaitNone("select " + all + " - count(*) from effect");
      return Rate.of(fresh, start);
    }
  }

  /** Brings the data to a size, all of it sent and applied. */
  void fill(int size) {
    bench.add(Math.max(0, size - bench.size()));
    send();
    apply();
  }

  private void effect(Counted counted) {
    bench.transactions.required(
        connection -> {
          try (PreparedStatement insert = insert(connection, "effect")) {
            insert.setString(1, counted.thing());
            insert.setInt(2, counted.number());
            return insert.executeUpdate();
          }
        });
  }

  private static PreparedStatement insert(Connection connection, String table) throws SQLException {
    return connection.prepareStatement("insert into " + table + " (thing, number) values (?, ?)");
  }

  /** The limit of the inbox: the same rows, sent in batches of a hundred by one writer. */
  double rawBatches(int events) throws SQLException {
    long start = System.nanoTime();
    try (Connection connection = bench.connections.getConnection()) {
      connection.setAutoCommit(false);
      for (int from = 0; from < events; from += BATCH) {
        try (PreparedStatement position =
                connection.prepareStatement(
                    "insert into inbox_position (topic, stream, version)"
                        + " values ('raw', ?, 1)");
            PreparedStatement effect = insert(connection, "raw_effect")) {
          for (int i = 0; i < BATCH; i++) {
            String id = UuidV7.next().toString();
            position.setString(1, id);
            position.addBatch();
            effect.setString(1, id);
            effect.setInt(2, i);
            effect.addBatch();
          }
          position.executeBatch();
          effect.executeBatch();
        }
        connection.commit();
      }
    }
    return Rate.of(events, start);
  }

  private void awaitNone(String count) {
    await()
        .pollInterval(Duration.ofMillis(20))
        .atMost(PATIENCE)
        .until(() -> bench.on.number(count) <= 0);
  }
}
