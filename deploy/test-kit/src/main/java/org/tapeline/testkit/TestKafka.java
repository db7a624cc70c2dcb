package org.tapeline.testkit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.clients.producer.RecordMetadata;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.apache.kafka.common.serialization.StringSerializer;

/**
 * Publishes as a peer service would (CloudEvents 1.0 in Kafka's binary mode) and reads what a
 * service published. For one thread.
 */
public final class TestKafka implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final String bootstrapServers;
  private final KafkaProducer<String, byte[]> producer;
  private final TopicReader topics;

  /**
   * An event to be sent, as often as wanted.
   *
   * @param version its place in its stream; on a compacted topic a number that rises
   * @param data the content; {@code null} for a tombstone
   */
  public record Envelope(
      String topic,
      String type,
      String stream,
      long version,
      String key,
      UUID id,
      UUID correlationId,
      UUID causationId,
      JsonNode data) {}

  /** A record as it stands on a topic; its content is read as JSON when it is asked for. */
  public record Message(String topic, String key, Map<String, String> headers, byte[] value) {
    /** The content; {@code null} for a tombstone. */
    public JsonNode data() {
      return value == null ? null : json(value);
    }

    public String type() {
      return headers.get("ce_type");
    }

    public String correlationId() {
      return headers.get("ce_correlationid");
    }
  }

  public TestKafka(String bootstrapServers) {
    this.bootstrapServers = bootstrapServers;
    producer =
        new KafkaProducer<>(
            Map.of("bootstrap.servers", bootstrapServers, "acks", "all"),
            new StringSerializer(),
            new ByteArraySerializer());
    topics = new TopicReader(bootstrapServers);
  }

  /** Sends it and waits until the broker has it. */
  public TestKafka publish(Envelope envelope) {
    return publishAll(List.of(envelope));
  }

  /** Sends them one behind the other and waits until the broker has them all. */
  public TestKafka publishAll(List<Envelope> envelopes) {
    List<Future<RecordMetadata>> sent =
        envelopes.stream().map(envelope -> producer.send(record(envelope))).toList();
    try {
      for (Future<RecordMetadata> one : sent) {
        one.get();
      }
    } catch (ExecutionException failed) {
      throw new IllegalStateException("The broker did not take it", failed.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
    return this;
  }

  private static ProducerRecord<String, byte[]> record(Envelope e) {
    ProducerRecord<String, byte[]> record =
        new ProducerRecord<>(e.topic(), e.key(), e.data() == null ? null : bytes(e.data()));
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put("ce_specversion", "1.0");
    headers.put("ce_id", e.id().toString());
    headers.put("ce_source", "/test");
    headers.put("ce_type", e.type());
    headers.put("ce_time", Instant.now().toString());
    headers.put("ce_subject", e.stream());
    headers.put("ce_correlationid", e.correlationId().toString());
    headers.put("ce_causationid", e.causationId().toString());
    headers.put("ce_streamversion", Long.toString(e.version()));
    headers.put("content-type", "application/json");
    headers.forEach(
        (name, value) -> record.headers().add(name, value.getBytes(StandardCharsets.UTF_8)));
    return record;
  }

  /**
   * Reads a topic from its first record on until enough records are of the wanted kind.
   *
   * @return all of the wanted kind, in the order of each partition; fewer when the time is over
   */
  public List<Message> await(String topic, int wanted, Duration atMost, Predicate<Message> kind) {
    return topics.await(topic, wanted, atMost, kind);
  }

  /**
   * All of that kind on a topic once the service that is tested has worked off what it was told and
   * sent what it has to say.
   */
  public List<Message> all(String topic, Duration atMost, Predicate<Message> kind) {
    Settled.await(bootstrapServers, atMost);
    return topics.upToNow(topic, kind);
  }

  private static byte[] bytes(JsonNode data) {
    try {
      return JSON.writeValueAsBytes(data);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static JsonNode json(byte[] data) {
    try {
      return JSON.readTree(data);
    } catch (IOException e) {
      throw new IllegalArgumentException(e);
    }
  }

  @Override
  public void close() {
    producer.close();
    topics.close();
  }
}
