package org.tapeline.journal.relay;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HexFormat;
import java.util.UUID;
import org.apache.kafka.common.header.internals.RecordHeaders;
import org.tapeline.journal.EventTypeName;

/**
 * CloudEvents 1.0 in Kafka's binary mode: every attribute and extension is a header {@code ce_...}.
 */
public final class Headers {
  private Headers() {}

  static RecordHeaders of(
      UUID id,
      String type,
      String stream,
      long version,
      Instant time,
      UUID correlationId,
      UUID causationId) {
    RecordHeaders headers = new RecordHeaders();
    add(headers, "content-type", "application/json");
    add(headers, "ce_specversion", "1.0");
    add(headers, "ce_id", id.toString());
    add(headers, "ce_source", "/tapeline/" + EventTypeName.parse(type).service());
    add(headers, "ce_type", type);
    add(headers, "ce_time", time.toString());
    add(headers, "ce_subject", stream);
    add(headers, "ce_streamversion", Long.toString(version));
    add(headers, "ce_correlationid", correlationId.toString());
    add(headers, "ce_causationid", causationId.toString());
    add(headers, "ce_traceparent", traceParent(correlationId, id));
    return headers;
  }

  static void add(RecordHeaders headers, String name, String value) {
    headers.add(name, value.getBytes(StandardCharsets.UTF_8));
  }

  /** W3C trace context: one trace a chain, so the correlation id is the trace id. */
  private static String traceParent(UUID correlationId, UUID id) {
    HexFormat hex = HexFormat.of();
    return "00-"
        + hex.toHexDigits(correlationId.getMostSignificantBits())
        + hex.toHexDigits(correlationId.getLeastSignificantBits())
        + "-"
        + hex.toHexDigits(id.getLeastSignificantBits())
        + "-01";
  }
}
