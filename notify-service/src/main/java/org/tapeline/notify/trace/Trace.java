package org.tapeline.notify.trace;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Everything that is known of one notice but its words; nothing of a person but ids. */
public record Trace(
    NoticeLine notice,
    List<UUID> players,
    List<CauseEvent> causes,
    List<Recorded> events,
    List<Try> tries,
    List<TextMessage> textMessages,
    List<Bounce> bounces) {

  /**
   * An event that led to the notice.
   *
   * @param type and the rest: {@code null} for one that was heard before such things were noted, or
   *     so long ago that it was deleted
   */
  public record CauseEvent(
      UUID id, String type, String service, String stream, Instant at, UUID causationId) {}

  /** An event of the notice's own stream. */
  public record Recorded(
      UUID id, long version, String type, Instant at, UUID causationId, JsonNode data) {}

  /** A try to send it; no outcome: it runs, or was cut off. */
  public record Try(
      int number,
      String channel,
      Instant startedAt,
      Instant endedAt,
      String outcome,
      String code) {}

  /** A text message as the gateway knows it. */
  public record TextMessage(int number, String state, Instant changedAt) {}

  /** The recipient's address on a channel was refused for good, and has taken nothing since. */
  public record Bounce(String channel, String code, Instant at) {}
}
