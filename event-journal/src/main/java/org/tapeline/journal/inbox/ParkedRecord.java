package org.tapeline.journal.inbox;

import java.time.Instant;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;

/**
 * A record that waits for a person, or for the event before it.
 *
 * @param reason malformed, unknown-type, failed, gap (an earlier version is missing) or behind (an
 *     earlier event of its stream is parked)
 */
record ParkedRecord(
    Envelope envelope,
    String stream,
    long version,
    String reason,
    String detail,
    int tries,
    Instant at) {

  static ParkedRecord malformed(Envelope envelope, String detail, Instant at) {
    String stream = "unreadable-" + envelope.partition() + "-" + envelope.offset();
    return new ParkedRecord(envelope, stream, 1, "malformed", String.valueOf(detail), 1, at);
  }

  static ParkedRecord of(
      Envelope envelope, ReceivedEvent event, String reason, String detail, int tries, Instant at) {
    return new ParkedRecord(
        envelope, event.stream(), event.version(), reason, String.valueOf(detail), tries, at);
  }

  /** Nothing is wrong with the event itself. */
  boolean onlyWaits() {
    return reason.equals("gap") || reason.equals("behind");
  }

  /** The event's id where it has a readable one. */
  String eventId() {
    try {
      return UUID.fromString(envelope.headers().getOrDefault("ce_id", "")).toString();
    } catch (IllegalArgumentException e) {
      return null;
    }
  }
}
