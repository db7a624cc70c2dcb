package org.tapeline.journal.quarkus;

import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.postgresql.ds.PGSimpleDataSource;
import org.tapeline.journal.kafka.KafkaClients;

/** What the journal takes from the service's configuration. */
@Singleton
class JournalSettings {
  @ConfigProperty(name = "tapeline.service")
  String service;

  @ConfigProperty(name = "tapeline.journal.partitions", defaultValue = "6")
  int partitions;

  @ConfigProperty(name = "tapeline.journal.replication", defaultValue = "-1")
  short replication;

  /** Threads that read the topics; what they wait for most is the database. */
  @ConfigProperty(name = "tapeline.journal.readers", defaultValue = "3")
  int readers;

  /** How often the relay says how far it has come; well below how old a reader's picture may be. */
  @ConfigProperty(name = "tapeline.journal.heartbeat", defaultValue = "PT2S")
  Duration heartbeat;

  /** How long the start of the service waits for the broker before it goes on without. */
  @ConfigProperty(name = "tapeline.journal.wait-for-broker", defaultValue = "PT10S")
  Duration waitForBroker;

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrapServers;

  @ConfigProperty(name = "quarkus.datasource.jdbc.url")
  String jdbcUrl;

  @ConfigProperty(name = "quarkus.datasource.username")
  String user;

  @ConfigProperty(name = "quarkus.datasource.password")
  String password;

  /** Events that are still written in an older version, such as {@code fitting.signed-off.v1}. */
  @ConfigProperty(name = "tapeline.events.write")
  Optional<List<String>> written;

  /** Whether a rebuild only says what differs. */
  @ConfigProperty(name = "tapeline.rebuild.compare-only", defaultValue = "false")
  boolean compareOnly;

  private final Config config;

  JournalSettings(Config config) {
    this.config = config;
  }

  /** Clients with every other {@code kafka.*} property passed on, as Kafka names them. */
  KafkaClients kafka() {
    Map<String, Object> extra = new HashMap<>();
    for (String name : config.getPropertyNames()) {
      if (name.startsWith("kafka.security.")
          || name.startsWith("kafka.ssl.")
          || name.startsWith("kafka.sasl.")) {
        extra.put(name.substring("kafka.".length()), config.getValue(name, String.class));
      }
    }
    return new KafkaClients(bootstrapServers, extra);
  }

  /** Connections outside of the pool, for the relay's lock. */
  PGSimpleDataSource dedicatedConnections() {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl(jdbcUrl);
    source.setUser(user);
    source.setPassword(password);
    source.setTcpKeepAlive(true);
    source.setLogServerErrorDetail(false);
    source.setSocketTimeout(30);
    source.setApplicationName("tapeline-relay");
    return source;
  }
}
