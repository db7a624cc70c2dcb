package org.tapeline.proof.faults.strike;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.clients.producer.KafkaProducer;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.apache.kafka.common.KafkaException;
import org.apache.kafka.common.serialization.ByteArraySerializer;
import org.apache.kafka.common.serialization.StringSerializer;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.process.TopicLog;

/** Records that stand on the topics are put there once more, with their headers, in any order. */
final class Redelivery {
  private static final int SOME = 200;

  private Redelivery() {}

  /**
   * @return how many were delivered again; 0 when the broker is away
   */
  static int some(StackPlace place, Random random) {
    try {
      List<ConsumerRecord<String, byte[]>> all = new ArrayList<>();
      for (String topic : TopicLog.TOPICS) {
        TopicLog.read(place.broker(), topic, Duration.ofSeconds(10), all::add);
      }
      if (all.isEmpty()) {
        return 0;
      }
      List<ConsumerRecord<String, byte[]>> chosen = new ArrayList<>();
      for (int i = 0; i < SOME; i++) {
        chosen.add(all.get(random.nextInt(all.size())));
      }
      return sendAgain(place, chosen);
    } catch (KafkaException e) {
      return 0;
    }
  }

  private static int sendAgain(StackPlace place, List<ConsumerRecord<String, byte[]>> chosen) {
    Map<String, Object> settings =
        Map.of(
            "bootstrap.servers", place.broker(),
            "acks", "all",
            "max.block.ms", 5000,
            "request.timeout.ms", 4000,
            "delivery.timeout.ms", 6000);
    try (KafkaProducer<String, byte[]> producer =
        new KafkaProducer<>(settings, new StringSerializer(), new ByteArraySerializer())) {
      for (ConsumerRecord<String, byte[]> r : chosen) {
        producer.send(new ProducerRecord<>(r.topic(), null, r.key(), r.value(), r.headers()));
      }
      producer.flush();
    }
    return chosen.size();
  }
}
