package org.tapeline.testkit;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Real PostgreSQL and Kafka for tests. In containers when an engine answers, else as embedded
 * servers; the system property or environment variable {@code TAPELINE_TEST_SERVERS} ({@code
 * containers}, {@code embedded}, {@code auto}) decides otherwise.
 *
 * <p>A Quarkus test gets a fresh database and a fresh broker at each start of the application, so
 * that nothing of one test class is seen by another; the relays of its peers are pretended. Plain
 * tests share the servers of their JVM by {@link #shared()} and make databases and topics of their
 * own.
 */
public final class TestServers implements QuarkusTestResourceLifecycleManager {
  private static final AtomicInteger DATABASES = new AtomicInteger();
  private static Shared shared;

  private KafkaServer kafka;
  private PretendedRelays relays;

  /** A database with a user that may do everything in it. */
  public record Database(String jdbcUrl, String user, String password) {}

  /** The servers of this JVM; they end with it. */
  public record Shared(PostgresServer postgres, KafkaServer kafka) {

    /** A database that nobody else uses. */
    public Database freshDatabase(String name) {
      return postgres.database(name.toLowerCase() + "_" + DATABASES.incrementAndGet());
    }

    public String kafkaBootstrapServers() {
      return kafka.bootstrapServers();
    }
  }

  public static synchronized Shared shared() {
    if (shared == null) {
      shared = new Shared(postgres(), KafkaServer.start());
      Runtime.getRuntime().addShutdownHook(new Thread(() -> shared.kafka().close()));
    }
    return shared;
  }

  private static PostgresServer sharedPostgres;

  private static synchronized PostgresServer postgres() {
    if (sharedPostgres == null) {
      sharedPostgres = PostgresServer.start();
      Runtime.getRuntime().addShutdownHook(new Thread(sharedPostgres::close));
    }
    return sharedPostgres;
  }

  @Override
  public Map<String, String> start() {
    Database database = postgres().database("service_" + DATABASES.incrementAndGet());
    kafka = KafkaServer.start();
    relays = PretendedRelays.on(kafka.bootstrapServers());
    return Map.of(
        "quarkus.datasource.jdbc.url", database.jdbcUrl(),
        "quarkus.datasource.username", database.user(),
        "quarkus.datasource.password", database.password(),
        "kafka.bootstrap.servers", kafka.bootstrapServers());
  }

  @Override
  public void stop() {
    if (relays != null) {
      relays.close();
    }
    if (kafka != null) {
      kafka.close();
    }
  }
}
