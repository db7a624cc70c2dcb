package org.tapeline.journal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.producer.Producer;
import org.flywaydb.core.Flyway;
import org.postgresql.ds.PGSimpleDataSource;
import org.tapeline.journal.inbox.Inbox;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.inbox.PeerHeartbeats;
import org.tapeline.journal.kafka.KafkaClients;
import org.tapeline.journal.kafka.Topics;
import org.tapeline.journal.relay.Heartbeat;
import org.tapeline.journal.relay.Relay;
import org.tapeline.journal.store.JdbcTransactions;
import org.tapeline.journal.store.PostgresJournal;
import org.tapeline.testkit.TestServers;

/** A fresh database with the journal's tables and a topic of its own, on real servers. */
public final class JournalFixture implements AutoCloseable {
  public static final String COUNTED = "org.tapeline.test.counted.v1";
  public static final EventTypes TYPES = EventTypes.of("test").with("counted", 1, Counted.class);
  public static final Duration SOON = Duration.ofSeconds(20);

  public final String service = "test-" + UUID.randomUUID();
  public final String topic = service + ".events";
  public final KafkaClients kafka;
  public final PGSimpleDataSource dataSource;
  public final JdbcTransactions transactions;
  public final Journal journal;
  private final List<AutoCloseable> running = new ArrayList<>();

  public JournalFixture() {
    TestServers.Shared servers = TestServers.shared();
    TestServers.Database database = servers.freshDatabase("journal");
    dataSource = new PGSimpleDataSource();
    dataSource.setUrl(database.jdbcUrl());
    dataSource.setUser(database.user());
    dataSource.setPassword(database.password());
    dataSource.setApplicationName("tapeline-test");
    Flyway.configure().dataSource(dataSource).locations("db/journal").load().migrate();
    transactions = new JdbcTransactions(dataSource);
    journal = new PostgresJournal(transactions, TYPES, Clock.systemUTC(), () -> {});
    kafka = new KafkaClients(servers.kafkaBootstrapServers(), Map.of());
    makeTopics(Set.of(topic, Topics.HEARTBEATS));
  }

  public void makeTopics(Set<String> topics) {
    try (Admin admin = kafka.admin()) {
      Topics.make(admin, topics, 3, (short) 1);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  public static StreamName stream(String id) {
    return StreamName.of("count", id, id);
  }

  /** Appends one event in a transaction of its own, as a command of its own. */
  public void append(String stream, long expectedVersion, int number) {
    journal.append(
        stream(stream),
        expectedVersion,
        List.of(new Counted(stream, number)),
        Cause.command(UuidV7.next()));
  }

  public Relay relay() {
    return relay(kafka::producer);
  }

  public Relay relay(Supplier<Producer<String, byte[]>> producers) {
    return running(new Relay(relayConnections(), producers, topic, heartbeat()));
  }

  private Heartbeat heartbeat() {
    return new Heartbeat(service, Duration.ofMillis(200), Clock.systemUTC());
  }

  /** Listens to this fixture's own relay. */
  public PeerHeartbeats heartbeats() {
    return running(new PeerHeartbeats(() -> kafka.consumer("beats-" + service), Set.of(service)));
  }

  public PGSimpleDataSource relayConnections() {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl(dataSource.getUrl());
    source.setUser(dataSource.getUser());
    source.setPassword(dataSource.getPassword());
    source.setApplicationName("tapeline-relay");
    return source;
  }

  public InboxConsumer consumer(Subscription subscription) {
    Inbox inbox = new Inbox(transactions, subscription, Clock.systemUTC());
    String group = "group-" + topic;
    return running(new InboxConsumer(() -> kafka.consumer(group), subscription.topics(), inbox, 2));
  }

  public <T extends AutoCloseable> T running(T part) {
    running.add(part);
    return part;
  }

  /** Ends the connections that the relay holds, as a crash of it would. */
  public int killRelayConnections() {
    return number(
            "select count(pg_terminate_backend(pid)) from pg_stat_activity"
                + " where application_name = 'tapeline-relay' and datname = current_database()")
        .intValue();
  }

  public Long number(String sql) {
    try (Connection connection = dataSource.getConnection();
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      row.next();
      return row.getLong(1);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  public void execute(String sql) {
    try (Connection connection = dataSource.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Everything on the topic now, in the order of each partition. */
  public List<ConsumerRecord<String, byte[]>> onTopic() {
    List<ConsumerRecord<String, byte[]>> records = new ArrayList<>();
    try (Consumer<String, byte[]> consumer = kafka.consumer("look-" + UUID.randomUUID())) {
      var partitions =
          consumer.partitionsFor(topic).stream()
              .map(p -> new org.apache.kafka.common.TopicPartition(topic, p.partition()))
              .toList();
      consumer.assign(partitions);
      consumer.seekToBeginning(partitions);
      var ends = consumer.endOffsets(partitions);
      while (ends.entrySet().stream().anyMatch(e -> consumer.position(e.getKey()) < e.getValue())) {
        consumer.poll(Duration.ofMillis(100)).forEach(records::add);
      }
    }
    return records;
  }

  /** A thread of its own, so that a transaction can stay open beside others. */
  public ExecutorService writer() {
    ExecutorService writer = Executors.newSingleThreadExecutor();
    running.add(writer::shutdownNow);
    return writer;
  }

  @Override
  public void close() {
    for (AutoCloseable part : running.reversed()) {
      try {
        part.close();
      } catch (Exception e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
