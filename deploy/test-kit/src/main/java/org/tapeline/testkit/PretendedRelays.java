package org.tapeline.testkit;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.errors.TopicExistsException;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.apache.kafka.common.serialization.StringSerializer;

/**
 * Beats as the relays of peers would that have nothing left to send, so that the service under test
 * can be sure of its picture of them.
 */
public final class PretendedRelays implements AutoCloseable {
  /** The services, with commas between, whose relays stand still. Read at each beat. */
  private static final String SILENT = "tapeline.test.silent-relays";

  private static final String TOPIC = "relay-heartbeats";
  private static final long EVERY_MILLIS = 500;
  private static final List<String> SERVICES = List.of("sizing", "fitting", "inventory", "notify");

  private final KafkaProducer<String, byte[]> producer;
  private final ScheduledExecutorService clockwork =
      Executors.newSingleThreadScheduledExecutor(
          work -> Thread.ofPlatform().name("pretended-relays").daemon().unstarted(work));

  private PretendedRelays(KafkaProducer<String, byte[]> producer) {
    this.producer = producer;
  }

  /** Lets these relays stand still from now on, and all others beat. */
  public static void silence(String... services) {
    // A property, since the test and the servers it runs on may have different class loaders.
    System.setProperty(SILENT, String.join(",", services));
  }

  static PretendedRelays on(String bootstrapServers) {
    makeTopic(bootstrapServers);
    silence();
    PretendedRelays relays =
        new PretendedRelays(
            new KafkaProducer<>(
                Map.of("bootstrap.servers", bootstrapServers),
                new StringSerializer(),
                new ByteArraySerializer()));
    relays.clockwork.scheduleAtFixedRate(relays::beat, 0, EVERY_MILLIS, TimeUnit.MILLISECONDS);
    return relays;
  }

  private static void makeTopic(String bootstrapServers) {
    try (Admin admin = Admin.create(Map.of("bootstrap.servers", bootstrapServers))) {
      admin.createTopics(List.of(new NewTopic(TOPIC, 1, (short) 1))).all().get();
    } catch (ExecutionException e) {
      if (!(e.getCause() instanceof TopicExistsException)) {
        throw new IllegalStateException(e.getCause());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private void beat() {
    Set<String> silent = Set.of(System.getProperty(SILENT, "").split(","));
    byte[] now = Instant.now().toString().getBytes(StandardCharsets.UTF_8);
    SERVICES.stream()
        .filter(service -> !silent.contains(service))
        .forEach(service -> producer.send(new ProducerRecord<>(TOPIC, service, now)));
  }

  @Override
  public void close() {
    clockwork.shutdownNow();
    producer.close(Duration.ZERO);
  }
}
