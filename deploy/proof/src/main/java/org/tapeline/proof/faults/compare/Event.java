package org.tapeline.proof.faults.compare;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.UUID;
import org.tapeline.proof.faults.process.Part;

/**
 * A row of a journal.
 *
 * @param type without the prefix and the version, such as {@code signed-off}
 * @param correlation id of the command that the chain began with
 * @param causation id of the command or event that led to it
 */
public record Event(
    Part service,
    long position,
    UUID id,
    String stream,
    long version,
    String type,
    Instant at,
    UUID correlation,
    UUID causation,
    JsonNode data) {

  /** A property as text; empty when there is none. */
  String text(String property) {
    return data.path(property).asText("");
  }

  int number(String property) {
    return data.path(property).asInt(0);
  }

  boolean is(String other) {
    return type.equals(other);
  }

  @Override
  public String toString() {
    return service.code()
        + " journal "
        + position
        + ": "
        + type
        + " "
        + id
        + " ("
        + stream
        + " version "
        + version
        + ")";
  }
}
