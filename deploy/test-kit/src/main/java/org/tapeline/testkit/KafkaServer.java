package org.tapeline.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.tapeline.servers.LocalKafka;
import org.testcontainers.kafka.KafkaContainer;
import org.testcontainers.utility.DockerImageName;

/** A Kafka broker. */
public interface KafkaServer extends AutoCloseable {
  String bootstrapServers();

  @Override
  void close();

  static KafkaServer start() {
    return ServerChoice.containers() ? new InContainer() : new Embedded();
  }

  /** The embedded broker. */
  final class Embedded implements KafkaServer {
    private final LocalKafka broker;

    Embedded() {
      try {
        broker = LocalKafka.temporary();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public String bootstrapServers() {
      return broker.bootstrapServers();
    }

    @Override
    public void close() {
      broker.close();
    }
  }

  /** A broker in a container. */
  final class InContainer implements KafkaServer {
    private final KafkaContainer container =
        new KafkaContainer(
            DockerImageName.parse(
                    ServerChoice.setting("TAPELINE_TEST_KAFKA_IMAGE", "apache/kafka:4.1.1"))
                .asCompatibleSubstituteFor("apache/kafka"));

    InContainer() {
      container.start();
    }

    @Override
    public String bootstrapServers() {
      return container.getBootstrapServers();
    }

    @Override
    public void close() {
      container.stop();
    }
  }
}
