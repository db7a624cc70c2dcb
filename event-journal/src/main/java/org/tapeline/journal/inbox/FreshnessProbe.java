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
import org.apache.kafka.common.KafkaException;
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

  private final Supplier<Admin> admins;
  private final String group;
  private final Set<String> topics;
  private final Clock clock;
  private final CountDownLatch stopping = new CountDownLatch(1);
  private final Thread thread;
  private final Supplier<Optional<Instant>> peersSentAll;
  private volatile Instant caughtUpAt;
  private volatile boolean level;
  private volatile boolean answers;
  private volatile Admin admin;
  private volatile Map<String, Long> behind = Map.of();

  /**
   * @param admins makes a client; fails while the broker's name leads nowhere
   * @param peersSentAll up to when the peers have sent everything; empty when that is not known
   */
  public FreshnessProbe(
      Supplier<Admin> admins,
      String group,
      Set<String> topics,
      Supplier<Optional<Instant>> peersSentAll,
      Clock clock) {
    this.peersSentAll = peersSentAll;
    this.admins = admins;
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

  /**
   * How many records of each topic the group has still to apply, as it was a second ago; empty when
   * the broker did not say.
   */
  public Map<String, Long> behind() {
    return behind;
  }

  /** Whether it goes on asking; it does until it is closed. */
  public boolean alive() {
    return thread.getState() != Thread.State.TERMINATED;
  }

  /** Whether the broker answered when it was asked last. */
  public boolean brokerAnswers() {
    return answers;
  }

  /**
   * What was asked for and has not been reached yet.
   *
   * @param sentAll up to when the peers had sent everything, as it was known before
   */
  private record Ask(Instant at, Optional<Instant> sentAll, Map<TopicPartition, Long> ends) {}

  private void run() {
    Ask waiting = null;
    while (!stopped()) {
      try {
        admin = admin == null ? admins.get() : admin;
        Ask now = new Ask(clock.instant(), peersSentAll.get(), ends());
        waiting = waiting == null ? now : waiting;
        Map<TopicPartition, OffsetAndMetadata> committed = committed();
        behind = behind(now.ends(), committed);
        answers = true;
        if (reached(waiting.ends(), committed)) {
          level = true;
          caughtUp(waiting);
          waiting = null;
        }
      } catch (ExecutionException | TimeoutException | KafkaException e) {
        LOG.log(Level.DEBUG, "The broker does not say how far we are: {0}", e.toString());
        behind = Map.of();
        answers = false;
        waiting = null;
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private void caughtUp(Ask reached) {
    reached
        .sentAll()
        .ifPresent(sent -> caughtUpAt = sent.isBefore(reached.at()) ? sent : reached.at());
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

  private Map<TopicPartition, OffsetAndMetadata> committed()
      throws ExecutionException, InterruptedException, TimeoutException {
    return admin
        .listConsumerGroupOffsets(group)
        .partitionsToOffsetAndMetadata()
        .get(ANSWER_SECONDS, TimeUnit.SECONDS);
  }

  private static boolean reached(
      Map<TopicPartition, Long> ends, Map<TopicPartition, OffsetAndMetadata> committed) {
    return ends.keySet().stream().allMatch(part -> missing(part, ends, committed) == 0);
  }

  private static Map<String, Long> behind(
      Map<TopicPartition, Long> ends, Map<TopicPartition, OffsetAndMetadata> committed) {
    return ends.keySet().stream()
        .collect(
            Collectors.toUnmodifiableMap(
                TopicPartition::topic, part -> missing(part, ends, committed), Long::sum));
  }

  private static long missing(
      TopicPartition part,
      Map<TopicPartition, Long> ends,
      Map<TopicPartition, OffsetAndMetadata> committed) {
    OffsetAndMetadata at = committed.get(part);
    return Math.max(0, ends.get(part) - (at == null ? 0 : at.offset()));
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
    if (admin != null) {
      admin.close(Duration.ofSeconds(1));
    }
  }
}
