package org.tapeline.journal.inbox;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.ListOffsetsResult.ListOffsetsResultInfo;
import org.apache.kafka.clients.admin.OffsetSpec;
import org.apache.kafka.clients.admin.TopicDescription;
import org.apache.kafka.clients.consumer.OffsetAndMetadata;
import org.apache.kafka.common.TopicPartition;
import org.tapeline.journal.Freshness;

/**
 * Asks the broker every second where the topics end, and whether the consumer group has come that
 * far. It asks for the group and not for this process, since a copy of the service that reads other
 * partitions writes to the same database. What a peer has not yet sent to the broker cannot be
 * asked for: the picture is only as fresh as the heartbeats of the peers' relays, as they were
 * heard before the ends were asked for. An unreachable broker and a silent peer leave the last
 * moment standing.
 */
public final class FreshnessProbe implements Freshness, AutoCloseable {
  private static final Logger LOG = System.getLogger(FreshnessProbe.class.getName());
  private static final Duration BETWEEN = Duration.ofSeconds(1);
  private static final long ANSWER_SECONDS = 5;

  private final Admin admin;
  private final String group;
  private final Set<String> topics;
  private final Clock clock;
  private final CountDownLatch stopping = new CountDownLatch(1);
  private final Thread thread;
  private final Supplier<Optional<Instant>> peersSentAll;
  private volatile Instant caughtUpAt;
  private volatile boolean level;

  /**
   * @param peersSentAll up to when the peers have sent everything; empty when that is not known
   */
  public FreshnessProbe(
      Admin admin,
      String group,
      Set<String> topics,
      Supplier<Optional<Instant>> peersSentAll,
      Clock clock) {
    this.peersSentAll = peersSentAll;
    this.admin = admin;
    this.group = group;
    this.topics = topics;
    this.clock = clock;
    this.thread = Thread.ofPlatform().name("journal-freshness").daemon().unstarted(this::run);
  }

  public FreshnessProbe start() {
    thread.start();
    return this;
  }

  @Override
  public Optional<Instant> caughtUpAt() {
    return Optional.ofNullable(caughtUpAt);
  }

  /** Whether everything that was in Kafka at some moment has been applied, whoever was silent. */
  public boolean wasLevel() {
    return level;
  }

  private void run() {
    Instant askedAt = null;
    Optional<Instant> sentAll = Optional.empty();
    Map<TopicPartition, Long> ends = Map.of();
    while (!stopped()) {
      try {
        if (askedAt == null) {
          Instant before = clock.instant();
          sentAll = peersSentAll.get();
          ends = ends();
          askedAt = before;
        }
        if (reached(ends)) {
          level = true;
          Instant asked = askedAt;
          sentAll.ifPresent(sent -> caughtUpAt = sent.isBefore(asked) ? sent : asked);
          askedAt = null;
        }
      } catch (ExecutionException | TimeoutException e) {
        LOG.log(Level.DEBUG, "The broker does not say how far we are: {0}", e.toString());
        askedAt = null;
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private boolean stopped() {
    try {
      return stopping.await(BETWEEN.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      return true;
    }
  }

  private Map<TopicPartition, Long> ends()
      throws ExecutionException, InterruptedException, TimeoutException {
    Map<TopicPartition, OffsetSpec> ask = new HashMap<>();
    for (TopicDescription topic :
        admin
            .describeTopics(topics)
            .allTopicNames()
            .get(ANSWER_SECONDS, TimeUnit.SECONDS)
            .values()) {
      topic
          .partitions()
          .forEach(p -> ask.put(new TopicPartition(topic.name(), p.partition()), latest()));
    }
    return admin.listOffsets(ask).all().get(ANSWER_SECONDS, TimeUnit.SECONDS).entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, e -> offset(e.getValue())));
  }

  private boolean reached(Map<TopicPartition, Long> ends)
      throws ExecutionException, InterruptedException, TimeoutException {
    Map<TopicPartition, OffsetAndMetadata> committed =
        admin
            .listConsumerGroupOffsets(group)
            .partitionsToOffsetAndMetadata()
            .get(ANSWER_SECONDS, TimeUnit.SECONDS);
    return ends.entrySet().stream()
        .allMatch(
            end -> {
              OffsetAndMetadata at = committed.get(end.getKey());
              return end.getValue() == 0 || (at != null && at.offset() >= end.getValue());
            });
  }

  private static OffsetSpec latest() {
    return OffsetSpec.latest();
  }

  private static long offset(ListOffsetsResultInfo info) {
    return info.offset();
  }

  @Override
  public void close() {
    stopping.countDown();
    thread.interrupt();
    admin.close(Duration.ofSeconds(1));
  }
}
