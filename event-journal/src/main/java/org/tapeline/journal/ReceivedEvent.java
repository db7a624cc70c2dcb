package org.tapeline.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.UUID;

/**
 * An event of a peer service, as it came from Kafka.
 *
 * @param version its place in its stream; for a compacted topic the revision of its state
 * @param data its content, {@code null} for a tombstone
 */
public record ReceivedEvent(
    String topic,
    UUID id,
    String type,
    String stream,
    long version,
    String key,
    Instant time,
    UUID correlationId,
    UUID causationId,
    JsonNode data) {

  /** The same event in another version of its type. */
  ReceivedEvent as(String otherType, JsonNode otherData) {
    return new ReceivedEvent(
        topic, id, otherType, stream, version, key, time, correlationId, causationId, otherData);
  }

  /**
   * Reads the fields that a consumer declares.
   *
   * @throws IllegalArgumentException when the content does not fit; it says where, and not what is
   *     written there, which may be of a person
   */
  public <T> T as(Class<T> view) {
    try {
      return EventJson.MAPPER.treeToValue(data, view);
    } catch (JsonMappingException e) {
      throw new IllegalArgumentException(type + " does not fit at " + path(e));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(type + " does not fit");
    }
  }

  /** Such as {@code needs[0].kind}. */
  private static String path(JsonMappingException e) {
    StringBuilder path = new StringBuilder();
    for (JsonMappingException.Reference step : e.getPath()) {
      if (step.getFieldName() == null) {
        path.append('[').append(step.getIndex()).append(']');
      } else {
        path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
      }
    }
    return path.isEmpty() ? "its top" : path.toString();
  }
}
