package org.tapeline.proof.fuzz.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.apache.kafka.clients.producer.ProducerRecord;

/** A record that can still be changed: the first event of a stream that nobody else writes. */
final class RecordDraft {
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  final Map<String, byte[]> headers = new LinkedHashMap<>();
  private final String topic;
  String key = UUID.randomUUID().toString();
  byte[] payload;

  RecordDraft(EventSamples.Sample sample) {
    topic = sample.topic();
    header("ce_specversion", "1.0");
    header("ce_id", UUID.randomUUID().toString());
    header("ce_source", "/tapeline/nobody");
    header("ce_type", sample.type());
    header("ce_time", Instant.now().toString());
    header("ce_subject", "odd-" + UUID.randomUUID());
    header("ce_streamversion", "1");
    header("ce_correlationid", UUID.randomUUID().toString());
    header("ce_causationid", UUID.randomUUID().toString());
    data(sample.data().deepCopy());
  }

  void header(String name, String value) {
    headers.put(name, value.getBytes(StandardCharsets.UTF_8));
  }

  ObjectNode data() {
    try {
      return (ObjectNode) JSON.readTree(payload);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void data(ObjectNode data) {
    try {
      payload = JSON.writeValueAsBytes(data);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  ProducerRecord<String, byte[]> record() {
    ProducerRecord<String, byte[]> record = new ProducerRecord<>(topic, key, payload);
    headers.forEach((name, value) -> record.headers().add(name, value));
    return record;
  }
}
