package org.tapeline.journal.inbox;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.header.Header;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.EventTypeName;
import org.tapeline.journal.ReceivedEvent;

/**
 * A Kafka record as it came, before anybody has understood it.
 *
 * @param payload the value as text; {@code null} for a tombstone
 */
record Envelope(
    String topic,
    int partition,
    long offset,
    String key,
    Map<String, String> headers,
    String payload) {
  /** More than any name of ours has, less than an index entry of PostgreSQL holds in UTF-8. */
  private static final int LONGEST = 300;

  static Envelope of(ConsumerRecord<String, byte[]> record) {
    Map<String, String> headers = new LinkedHashMap<>();
    for (Header header : record.headers()) {
      if (header.value() != null) {
        headers.put(header.key(), new String(header.value(), StandardCharsets.UTF_8));
      }
    }
    String payload =
        record.value() == null ? null : new String(record.value(), StandardCharsets.UTF_8);
    return new Envelope(
        record.topic(), record.partition(), record.offset(), record.key(), headers, payload);
  }

  boolean tombstone() {
    return payload == null;
  }

  /**
   * @throws Malformed when the record is not an event of ours
   */
  ReceivedEvent open() {
    try {
      JsonNode data = tombstone() ? null : EventJson.MAPPER.readTree(payload);
      ReceivedEvent event =
          new ReceivedEvent(
              topic,
              UUID.fromString(header("ce_id")),
              EventTypeName.parse(header("ce_type")).text(),
              header("ce_subject"),
              Long.parseLong(header("ce_streamversion")),
              key,
              Instant.parse(header("ce_time")),
              UUID.fromString(header("ce_correlationid")),
              UUID.fromString(header("ce_causationid")),
              data);
      if (event.version() < 1) {
        throw new Malformed("ce_streamversion is below 1", null);
      }
      return event;
    } catch (IllegalArgumentException | DateTimeException | JsonProcessingException e) {
      throw new Malformed(e.getMessage(), e);
    }
  }

  private String header(String name) {
    String value = headers.get(name);
    if (value == null || value.isBlank()) {
      throw new Malformed("header " + name + " is missing", null);
    }
    if (value.length() > LONGEST || value.indexOf('\0') >= 0) {
      throw new Malformed("header " + name + " is too long or has a NUL", null);
    }
    return value;
  }

  /** Not an event that can be read. */
  static final class Malformed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Malformed(String message, Throwable cause) {
      super(message, cause);
    }
  }
}
