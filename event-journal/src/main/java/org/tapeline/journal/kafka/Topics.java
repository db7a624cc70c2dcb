package org.tapeline.journal.kafka;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.AlterConfigOp;
import org.apache.kafka.clients.admin.ConfigEntry;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.common.config.ConfigResource;
import org.apache.kafka.common.config.TopicConfig;
import org.apache.kafka.common.errors.TopicExistsException;

/** The topics that the services share. Whoever starts first makes them. */
public final class Topics {
  /**
   * The only topic with personal data: compacted, so that a tombstone erases. The broker compacts a
   * part of the log once it is full or, as it is set here, a day old, at the next record that comes
   * to it; by itself it would keep what was erased for as long as little is written.
   */
  public static final String PEOPLE = "people";

  /** Up to when each service's relay has sent everything: one small record a service and beat. */
  public static final String HEARTBEATS = "relay-heartbeats";

  /** Beats are many and only the newest of each service counts: the log is tidied often. */
  private static final String TIDY_MILLIS = "600000";

  private static final String DAY_MILLIS = "86400000";

  private static final int ANSWER_SECONDS = 30;
  private static final Logger LOG = System.getLogger(Topics.class.getName());

  private Topics() {}

  /** The topic of a service's events: {@code fitting.events}. */
  public static String of(String service) {
    return service + ".events";
  }

  /**
   * Makes those of the topics that do not exist.
   *
   * @param partitions how many each gets; the heartbeats need but one
   * @param replication copies of each; -1 for the broker's default
   */
  public static void make(Admin admin, Set<String> topics, int partitions, short replication)
      throws InterruptedException, TimeoutException {
    for (String topic : topics) {
      int parts = topic.equals(HEARTBEATS) ? 1 : partitions;
      NewTopic wanted = new NewTopic(topic, parts, replication).configs(settings(topic));
      try {
        admin.createTopics(List.of(wanted)).all().get(ANSWER_SECONDS, TimeUnit.SECONDS);
      } catch (ExecutionException e) {
        if (!(e.getCause() instanceof TopicExistsException)) {
          throw new IllegalStateException("Topic " + topic + ": " + e.getCause(), e.getCause());
        }
        if (topic.equals(PEOPLE)) {
          keepWhatIsErasedNoLonger(admin);
        }
      }
    }
  }

  /** The topic may have been made before there was the setting, or by hand. */
  private static void keepWhatIsErasedNoLonger(Admin admin)
      throws InterruptedException, TimeoutException {
    ConfigResource people = new ConfigResource(ConfigResource.Type.TOPIC, PEOPLE);
    List<AlterConfigOp> set =
        settings(PEOPLE).entrySet().stream()
            .map(s -> new ConfigEntry(s.getKey(), s.getValue()))
            .map(entry -> new AlterConfigOp(entry, AlterConfigOp.OpType.SET))
            .toList();
    try {
      admin
          .incrementalAlterConfigs(Map.of(people, set))
          .all()
          .get(ANSWER_SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      LOG.log(Level.WARNING, "The topic people cannot be set to forget within a day", e.getCause());
    }
  }

  private static Map<String, String> settings(String topic) {
    return switch (topic) {
      case PEOPLE ->
          Map.of(
              TopicConfig.CLEANUP_POLICY_CONFIG,
              TopicConfig.CLEANUP_POLICY_COMPACT,
              TopicConfig.MAX_COMPACTION_LAG_MS_CONFIG,
              DAY_MILLIS);
      case HEARTBEATS ->
          Map.of(
              TopicConfig.CLEANUP_POLICY_CONFIG,
              TopicConfig.CLEANUP_POLICY_COMPACT + "," + TopicConfig.CLEANUP_POLICY_DELETE,
              TopicConfig.SEGMENT_MS_CONFIG,
              TIDY_MILLIS,
              TopicConfig.RETENTION_MS_CONFIG,
              DAY_MILLIS);
      // Events are kept: a consumer that is new, or rebuilt, starts from the first.
      default -> Map.of(TopicConfig.RETENTION_MS_CONFIG, "-1");
    };
  }
}
