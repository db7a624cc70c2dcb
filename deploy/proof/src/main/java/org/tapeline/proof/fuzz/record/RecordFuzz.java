package org.tapeline.proof.fuzz.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Random;
import java.util.TreeMap;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.Producer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.apache.kafka.common.serialization.StringSerializer;

/** Sends a broken record of every event type for every twist, and broken heartbeats. */
public final class RecordFuzz {
  private static final String HEARTBEATS = "relay-heartbeats";
  private static final int BEATS = 20;

  private final String bootstrap;

  /**
   * @param bootstrap {@code host:port} of the broker
   */
  public RecordFuzz(String bootstrap) {
    this.bootstrap = bootstrap;
  }

  /**
   * @param share of the twists that each event type gets, from 0 to 1
   * @return how many went to each topic
   */
  public Map<String, Integer> send(Path root, long seed, double share) throws IOException {
    Map<String, Integer> sent = new TreeMap<>();
    Random random = new Random(seed);
    List<EventSamples.Sample> samples = EventSamples.in(root);
    try (Producer<String, byte[]> producer = producer()) {
      for (EventSamples.Sample sample : samples) {
        for (RecordTwist twist : RecordTwist.all()) {
          if (random.nextDouble() < share) {
            RecordDraft draft = new RecordDraft(sample);
            twist.change().accept(draft, random);
            producer.send(draft.record());
            sent.merge(sample.topic(), 1, Integer::sum);
          }
        }
      }
      for (int beat = 0; beat < BEATS; beat++) {
        byte[] value = new byte[random.nextInt(40)];
        random.nextBytes(value);
        producer.send(new ProducerRecord<>(HEARTBEATS, beat % 2 == 0 ? "fitting" : null, value));
        sent.merge(HEARTBEATS, 1, Integer::sum);
      }
      producer.flush();
    }
    return sent;
  }

  private Producer<String, byte[]> producer() {
    Properties settings = new Properties();
    settings.put("bootstrap.servers", bootstrap);
    return new KafkaProducer<>(settings, new StringSerializer(), new ByteArraySerializer());
  }
}
