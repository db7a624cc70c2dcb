package org.tapeline.journal;

import java.util.HexFormat;
import java.util.UUID;

/**
 * Ids of W3C trace context that follow from those that every event carries anyway: one trace a
 * chain, its id the correlation id; one span a command or event, its id the lower half of theirs.
 * So a trace goes on wherever an event goes, also when a process died on the way, and whoever has a
 * correlation id has the trace.
 */
public final class TraceIds {
  private static final HexFormat HEX = HexFormat.of();

  private TraceIds() {}

  /** 32 hexadecimal digits: the correlation id without its dashes. */
  public static String trace(UUID correlationId) {
    return HEX.toHexDigits(correlationId.getMostSignificantBits())
        + HEX.toHexDigits(correlationId.getLeastSignificantBits());
  }

  /**
   * 16 hexadecimal digits.
   *
   * @param id of a command or an event
   */
  public static String span(UUID id) {
    return HEX.toHexDigits(id.getLeastSignificantBits());
  }

  /** The value of {@code traceparent} for what an event leads to. */
  public static String parent(UUID correlationId, UUID eventId) {
    return "00-" + trace(correlationId) + "-" + span(eventId) + "-01";
  }
}
