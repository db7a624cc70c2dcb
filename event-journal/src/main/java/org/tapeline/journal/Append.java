package org.tapeline.journal;

import java.util.List;

/**
 * Events that are to be appended to one stream.
 *
 * @param expectedVersion the version of the last event that the caller has seen; 0 for a stream
 *     that does not exist yet
 */
public record Append(
    StreamName stream, long expectedVersion, List<? extends Record> events, Cause cause) {

  public Append {
    events = List.copyOf(events);
  }
}
