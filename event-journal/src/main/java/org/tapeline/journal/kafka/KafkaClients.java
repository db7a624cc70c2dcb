package org.tapeline.journal.kafka;

import java.util.HashMap;
import java.util.Map;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.AdminClientConfig;
import org.apache.kafka.clients.consumer.Consumer;
import org.apache.kafka.clients.consumer.ConsumerConfig;
import org.apache.kafka.clients.consumer.KafkaConsumer;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerConfig;
import org.apache.kafka.common.serialization.ByteArrayDeserializer;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.apache.kafka.common.serialization.StringDeserializer;
import org.apache.kafka.common.serialization.StringSerializer;

/**
 * Kafka clients set up for what the journal promises.
 *
 * @param bootstrapServers {@code host:port}, several with commas
 * @param extra further client settings, such as those for encryption and log-in
 */
public record KafkaClients(String bootstrapServers, Map<String, Object> extra) {

  /** Idempotent, acknowledged by all replicas: a batch is in the topic in order, or it is not. */
  public Producer<String, byte[]> producer() {
    Map<String, Object> settings = settings();
    settings.put(ProducerConfig.ACKS_CONFIG, "all");
    settings.put(ProducerConfig.ENABLE_IDEMPOTENCE_CONFIG, true);
    settings.put(ProducerConfig.LINGER_MS_CONFIG, 0);
    settings.put(ProducerConfig.MAX_BLOCK_MS_CONFIG, 10_000);
    settings.put(ProducerConfig.DELIVERY_TIMEOUT_MS_CONFIG, 20_000);
    settings.put(ProducerConfig.REQUEST_TIMEOUT_MS_CONFIG, 10_000);
    return new KafkaProducer<>(settings, new StringSerializer(), new ByteArraySerializer());
  }

  /** Reads from the beginning when new; offsets are committed by hand, after the database. */
  public Consumer<String, byte[]> consumer(String group) {
    Map<String, Object> settings = settings();
    settings.put(ConsumerConfig.GROUP_ID_CONFIG, group);
    settings.put(ConsumerConfig.ENABLE_AUTO_COMMIT_CONFIG, false);
    settings.put(ConsumerConfig.AUTO_OFFSET_RESET_CONFIG, "earliest");
    // A batch is one transaction: what it caused is seen by others only at its end.
    settings.put(ConsumerConfig.MAX_POLL_RECORDS_CONFIG, 100);
    settings.put(ConsumerConfig.METADATA_MAX_AGE_CONFIG, 5_000);
    // A process that was killed is missed after this long, and only then another reads on. A copy
    // that is merely slow and taken for dead does no harm: the inbox applies nothing twice.
    settings.put(ConsumerConfig.SESSION_TIMEOUT_MS_CONFIG, 10_000);
    settings.put(ConsumerConfig.HEARTBEAT_INTERVAL_MS_CONFIG, 3_000);
    return new KafkaConsumer<>(settings, new StringDeserializer(), new ByteArrayDeserializer());
  }

  public Admin admin() {
    return Admin.create(settings());
  }

  private Map<String, Object> settings() {
    Map<String, Object> settings = new HashMap<>(extra);
    settings.put(AdminClientConfig.BOOTSTRAP_SERVERS_CONFIG, bootstrapServers);
    return settings;
  }
}
