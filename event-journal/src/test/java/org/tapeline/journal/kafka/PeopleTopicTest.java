package org.tapeline.journal.kafka;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.Config;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.common.config.ConfigResource;
import org.apache.kafka.common.config.TopicConfig;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.KafkaServer;

@Tag("servers")
@Tag("containers")
@DisplayName("The topic people")
class PeopleTopicTest {
  private static final ConfigResource PEOPLE =
      new ConfigResource(ConfigResource.Type.TOPIC, Topics.PEOPLE);

  @Test
  @DisplayName("forgets within a day what was erased, also when it was made without that setting")
  void forgets() throws Exception {
    try (KafkaServer server = KafkaServer.start();
        Admin admin = new KafkaClients(server.bootstrapServers(), Map.of()).admin()) {
      admin.createTopics(List.of(new NewTopic(Topics.PEOPLE, 1, (short) 1))).all().get();
      assertThat(lag(admin)).isGreaterThan(Duration.ofDays(1).toMillis());
      Topics.make(admin, Set.of(Topics.PEOPLE), 1, (short) 1);
      assertThat(lag(admin)).isEqualTo(Duration.ofDays(1).toMillis());
      assertThat(setting(admin, TopicConfig.CLEANUP_POLICY_CONFIG))
          .isEqualTo(TopicConfig.CLEANUP_POLICY_COMPACT);
    }
  }

  private static long lag(Admin admin) throws Exception {
    return Long.parseLong(setting(admin, TopicConfig.MAX_COMPACTION_LAG_MS_CONFIG));
  }

  private static String setting(Admin admin, String name) throws Exception {
    Config config = admin.describeConfigs(List.of(PEOPLE)).all().get().get(PEOPLE);
    return config.get(name).value();
  }
}
