package org.tapeline.journal.relay;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.UUID;
import org.apache.kafka.common.header.internals.RecordHeaders;
import org.tapeline.journal.EventTypeName;
import org.tapeline.journal.TraceIds;

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
    add(headers, "ce_traceparent", TraceIds.parent(correlationId, id));
    return headers;
  }

  static void add(RecordHeaders headers, String name, String value) {
    headers.add(name, value.getBytes(StandardCharsets.UTF_8));
  }
}
