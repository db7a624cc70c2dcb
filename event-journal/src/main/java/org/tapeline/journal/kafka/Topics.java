package org.tapeline.journal.kafka;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.common.config.TopicConfig;
import org.apache.kafka.common.errors.TopicExistsException;

/** The topics that the services share. Whoever starts first makes them. */
public final class Topics {
  /** The only topic with personal data: compacted, so that a tombstone erases. */
  public static final String PEOPLE = "people";

  private static final int ANSWER_SECONDS = 30;

  private Topics() {}

  /** The topic of a service's events: {@code fitting.events}. */
  public static String of(String service) {
    return service + ".events";
  }

  /**
   * Makes those of the topics that do not exist.
   *
   * @param partitions how many each gets
   * @param replication copies of each; -1 for the broker's default
   */
  public static void make(Admin admin, Set<String> topics, int partitions, short replication)
      throws InterruptedException, TimeoutException {
    for (String topic : topics) {
      NewTopic wanted = new NewTopic(topic, partitions, replication).configs(settings(topic));
      try {
        admin.createTopics(List.of(wanted)).all().get(ANSWER_SECONDS, TimeUnit.SECONDS);
      } catch (ExecutionException e) {
        if (!(e.getCause() instanceof TopicExistsException)) {
          throw new IllegalStateException("Topic " + topic + ": " + e.getCause(), e.getCause());
        }
      }
    }
  }

  private static Map<String, String> settings(String topic) {
    return topic.equals(PEOPLE)
        ? Map.of(TopicConfig.CLEANUP_POLICY_CONFIG, TopicConfig.CLEANUP_POLICY_COMPACT)
        // Events are kept: a consumer that is new, or rebuilt, starts from the first.
        : Map.of(TopicConfig.RETENTION_MS_CONFIG, "-1");
  }
}
