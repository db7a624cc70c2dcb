package org.tapeline.journal.inbox;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.TopicPartition;
import org.tapeline.journal.kafka.Topics;

/**
 * Listens to the heartbeats of the relays whose topics this service reads. Every copy of the
 * service listens for itself: what it hears is not kept.
 */
public final class PeerHeartbeats implements AutoCloseable {
  private static final Logger LOG = System.getLogger(PeerHeartbeats.class.getName());
  private static final Duration POLL = Duration.ofMillis(250);

  /** So many of the newest are read at the start: enough to hold one of each service. */
  private static final long LOOK_BACK = 200;

  private static final String EVENTS = ".events";

  private final Set<String> peers;
  private final Map<String, Instant> heard = new ConcurrentHashMap<>();
  private final ReadingThread thread;

  /**
   * @param peers the services that must be heard of
   */
  public PeerHeartbeats(Supplier<Consumer<String, byte[]>> consumers, Set<String> peers) {
    this.peers = Set.copyOf(peers);
    this.thread =
        new ReadingThread(
            "journal-heartbeats",
            consumers,
            PeerHeartbeats::begin,
            c -> c.poll(POLL).forEach(this::hear));
  }

  /** The services that write the topics: those of {@code sizing.events} is {@code sizing}. */
  public static Set<String> writersOf(Set<String> topics) {
    return topics.stream()
        .filter(topic -> topic.endsWith(EVENTS))
        .map(topic -> topic.substring(0, topic.length() - EVENTS.length()))
        .collect(Collectors.toUnmodifiableSet());
  }

  public PeerHeartbeats start() {
    thread.start();
    return this;
  }

  /**
   * The moment up to which every peer has sent all that it committed; empty when one of them has
   * not been heard.
   */
  public Optional<Instant> allSentAt() {
    return heard.keySet().containsAll(peers)
        ? Optional.of(peers.stream().map(heard::get).min(Instant::compareTo).orElse(Instant.MAX))
        : Optional.empty();
  }

  /** The moment up to which each peer that was heard has sent everything, by service. */
  public Map<String, Instant> heard() {
    return Map.copyOf(heard);
  }

  /** The services that must be heard of. */
  public Set<String> peers() {
    return peers;
  }

  private static void begin(Consumer<String, byte[]> consumer) {
    List<TopicPartition> partitions =
        consumer.partitionsFor(Topics.HEARTBEATS).stream()
            .map(p -> new TopicPartition(p.topic(), p.partition()))
            .toList();
    consumer.assign(partitions);
    consumer
        .endOffsets(partitions)
        .forEach((partition, end) -> consumer.seek(partition, Math.max(0, end - LOOK_BACK)));
  }

  /** The newest counts, in whichever order they come. What cannot be read says nothing. */
  private void hear(ConsumerRecord<String, byte[]> record) {
    if (record.key() == null || record.value() == null || !peers.contains(record.key())) {
      return;
    }
    try {
      Instant moment = Instant.parse(new String(record.value(), StandardCharsets.UTF_8));
      heard.merge(record.key(), moment, (one, other) -> one.isAfter(other) ? one : other);
    } catch (DateTimeException e) {
      LOG.log(Level.WARNING, "Not a heartbeat of {0}: {1}", record.key(), e.getMessage());
    }
  }

  @Override
  public void close() {
    thread.close();
  }
}
