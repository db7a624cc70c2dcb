package org.tapeline.journal.inbox;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.TopicPartition;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.Subscription.Mode;
import org.tapeline.journal.Transactions;

/**
 * Reads the topics again from their first records and gives each subscription what the service has
 * applied: what it has not come to yet, or has parked, is held back until it has. No offset is
 * committed, and nobody else's place in the topics is touched.
 */
public final class TopicReplay implements AutoCloseable {
  /** More than this is not held in memory: then the service is far behind, or much is parked. */
  private static final int MOST_HELD_BACK = 20_000;

  private static final Duration POLL = Duration.ofMillis(200);
  private static final String APPLIED =
      """
      select p.topic, p.stream, p.version from %s.inbox_position p
      join unnest(?::text[], ?::text[]) as asked (topic, stream) using (topic, stream)
      """;

  private final Consumer<String, byte[]> consumer;
  private final List<Subscription> copies;
  private final Map<String, Mode> modes = new HashMap<>();
  private final List<TopicPartition> partitions = new ArrayList<>();
  private final Transactions transactions;
  private final String applied;
  private List<Envelope> heldBack = List.of();
  private List<Envelope> fetched = List.of();
  private long done;
  private int lost;

  private record Opened(ReceivedEvent event, Envelope envelope) {
    String place() {
      return event.topic() + " " + event.stream();
    }
  }

  /** How far it has come. */
  public static final class Mark {
    private final Map<TopicPartition, Long> offsets;
    private final List<Envelope> heldBack;
    private final List<Envelope> fetched;
    private final long done;

    private Mark(
        Map<TopicPartition, Long> offsets,
        List<Envelope> heldBack,
        List<Envelope> fetched,
        long done) {
      this.offsets = offsets;
      this.heldBack = heldBack;
      this.fetched = fetched;
      this.done = done;
    }
  }

  /**
   * @param live the schema in which the service keeps how far it has come
   */
  public TopicReplay(
      Consumer<String, byte[]> consumer,
      List<Subscription> copies,
      Transactions transactions,
      String live) {
    this.consumer = consumer;
    this.copies = copies;
    this.transactions = transactions;
    this.applied = APPLIED.formatted(live);
    copies.forEach(of -> of.topics().forEach(topic -> modes.put(topic, of.mode(topic))));
    for (String topic : modes.keySet()) {
      consumer
          .partitionsFor(topic)
          .forEach(p -> partitions.add(new TopicPartition(topic, p.partition())));
    }
    consumer.assign(partitions);
    consumer.seekToBeginning(partitions);
  }

  /** Records in the topics. */
  public long total() {
    Map<TopicPartition, Long> first = consumer.beginningOffsets(partitions);
    return consumer.endOffsets(partitions).entrySet().stream()
        .mapToLong(end -> end.getValue() - first.get(end.getKey()))
        .sum();
  }

  public long done() {
    return done;
  }

  /** Fetches the next records, unless those before have still to be applied. */
  public void fetch() {
    if (!fetched.isEmpty() || partitions.isEmpty() || atEnd()) {
      return;
    }
    List<Envelope> batch = new ArrayList<>();
    for (ConsumerRecord<String, byte[]> record : consumer.poll(POLL)) {
      batch.add(Envelope.of(record));
    }
    fetched = batch;
  }

  /** Whether everything that is in the topics now was fetched. */
  public boolean atEnd() {
    return consumer.endOffsets(partitions).entrySet().stream()
        .allMatch(end -> consumer.position(end.getKey()) >= end.getValue());
  }

  /**
   * Gives on what was fetched and what was held back.
   *
   * @throws IllegalStateException when too much has to be held back
   */
  public void apply(Connection connection) throws SQLException {
    List<Opened> events =
        Stream.concat(heldBack.stream(), fetched.stream())
            .flatMap(envelope -> opened(envelope).stream())
            .toList();
    Map<String, Long> reached = reached(connection, events);
    List<Opened> wait = events;
    int before;
    do {
      before = wait.size();
      wait = pass(connection, wait, reached);
    } while (wait.size() < before && lost > 0);
    if (wait.size() > MOST_HELD_BACK) {
      throw new IllegalStateException(
          "The service has not applied "
              + wait.size()
              + " events that are in the topics. Wait until it has caught up, or look at what is"
              + " parked, and start again.");
    }
    done += fetched.size();
    heldBack = wait.stream().map(Opened::envelope).toList();
    fetched = List.of();
  }

  /** What has to wait: for the service, or for an event of its stream that comes later. */
  private List<Opened> pass(Connection connection, List<Opened> events, Map<String, Long> reached)
      throws SQLException {
    List<Opened> wait = new ArrayList<>();
    lost = 0;
    for (Opened opened : events) {
      ReceivedEvent event = opened.event();
      Mode mode = modes.get(event.topic());
      long at = reached.getOrDefault(opened.place(), 0L);
      if (event.version() > at) {
        wait.add(opened);
      } else if (mode == Mode.LATEST && event.version() < at) {
        // The state that the service has reached says all, and one before it may never have been
        // applied: it was parked, or the topic was compacted before the service saw it.
        continue;
      } else if (Positions.advance(connection, event, mode)) {
        copies.forEach(copy -> give(copy, event));
        transactions.settle();
      } else if (mode == Mode.EVERY_VERSION
          && event.version() > Positions.of(connection, event.topic(), event.stream()) + 1) {
        wait.add(opened);
        lost++;
      }
    }
    return wait;
  }

  /**
   * @throws IllegalStateException when the topics do not hold every event any more that the service
   *     has applied
   */
  public void mustBeWhole() {
    if (lost > 0) {
      throw new IllegalStateException(
          "The topics lack events that stood before " + lost + " others of their streams.");
    }
  }

  private static void give(Subscription copy, ReceivedEvent event) {
    if (event.data() == null) {
      copy.handleErased(event);
    } else {
      copy.handle(event);
    }
  }

  /** What is no event of ours, or of no concern here, is passed over. */
  private static Optional<Opened> opened(Envelope envelope) {
    try {
      return Optional.of(new Opened(envelope.open(), envelope));
    } catch (Envelope.Malformed e) {
      // The service has parked it: it has no effect there either.
      return Optional.empty();
    }
  }

  private Map<String, Long> reached(Connection connection, List<Opened> events)
      throws SQLException {
    Set<String> topics = new TreeSet<>();
    events.forEach(opened -> topics.add(opened.place()));
    Map<String, Long> reached = new HashMap<>();
    try (PreparedStatement select = connection.prepareStatement(applied)) {
      Object[] names = topics.stream().map(p -> p.substring(0, p.indexOf(' '))).toArray();
      Object[] streams = topics.stream().map(p -> p.substring(p.indexOf(' ') + 1)).toArray();
      select.setArray(1, connection.createArrayOf("text", names));
      select.setArray(2, connection.createArrayOf("text", streams));
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          reached.put(row.getString(1) + " " + row.getString(2), row.getLong(3));
        }
      }
    }
    return reached;
  }

  public Mark mark() {
    Map<TopicPartition, Long> offsets = new HashMap<>();
    partitions.forEach(partition -> offsets.put(partition, consumer.position(partition)));
    return new Mark(offsets, heldBack, fetched, done);
  }

  public void goBackTo(Mark mark) {
    mark.offsets.forEach(consumer::seek);
    heldBack = mark.heldBack;
    fetched = mark.fetched;
    done = mark.done;
  }

  @Override
  public void close() {
    consumer.close();
  }
}
