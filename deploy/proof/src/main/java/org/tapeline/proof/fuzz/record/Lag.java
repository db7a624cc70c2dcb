package org.tapeline.proof.fuzz.record;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.OffsetSpec;
import org.apache.kafka.clients.consumer.OffsetAndMetadata;
import org.apache.kafka.common.TopicPartition;

/** How far the consumers are behind, by consumer group. */
public final class Lag {
  private static final Duration AGAIN = Duration.ofMillis(500);
  private static final int ANSWER_SECONDS = 20;

  private final String bootstrap;

  public Lag(String bootstrap) {
    this.bootstrap = bootstrap;
  }

  /**
   * Waits until nobody is behind.
   *
   * @return who still is when the time is up, and by how many records; empty when nobody
   */
  public Map<String, Long> untilNone(Duration patience) {
    Instant until = Instant.now().plus(patience);
    try (Admin admin = Admin.create(Map.of("bootstrap.servers", bootstrap))) {
      Map<String, Long> behind = behind(admin);
      while (!behind.isEmpty() && Instant.now().isBefore(until)) {
        Thread.sleep(AGAIN);
        behind = behind(admin);
      }
      return behind;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    } catch (ExecutionException | TimeoutException e) {
      throw new IllegalStateException("The broker does not say how far the consumers are", e);
    }
  }

  private static Map<String, Long> behind(Admin admin)
      throws ExecutionException, InterruptedException, TimeoutException {
    Map<String, Long> behind = new TreeMap<>();
    Set<String> groups =
        admin.listGroups().all().get(ANSWER_SECONDS, TimeUnit.SECONDS).stream()
            .map(group -> group.groupId())
            .collect(Collectors.toSet());
    for (String group : groups) {
      Map<TopicPartition, OffsetAndMetadata> at =
          admin
              .listConsumerGroupOffsets(group)
              .partitionsToOffsetAndMetadata()
              .get(ANSWER_SECONDS, TimeUnit.SECONDS);
      var ends =
          admin
              .listOffsets(
                  at.keySet().stream().collect(Collectors.toMap(p -> p, p -> OffsetSpec.latest())))
              .all()
              .get(ANSWER_SECONDS, TimeUnit.SECONDS);
      long missing =
          at.entrySet().stream()
              .mapToLong(p -> ends.get(p.getKey()).offset() - p.getValue().offset())
              .sum();
      if (missing > 0) {
        behind.put(group, missing);
      }
    }
    return behind;
  }
}
