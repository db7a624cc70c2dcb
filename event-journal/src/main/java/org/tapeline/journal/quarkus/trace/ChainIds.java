package org.tapeline.journal.quarkus.trace;

import io.opentelemetry.api.trace.Span;
import io.opentelemetry.api.trace.SpanBuilder;
import io.opentelemetry.sdk.trace.IdGenerator;
import java.util.UUID;
import org.tapeline.journal.TraceIds;

/** Random ids, but for a span that is that of a command or an event. */
public final class ChainIds implements IdGenerator {
  private final IdGenerator random = IdGenerator.random();
  private final ThreadLocal<Chosen> chosen = new ThreadLocal<>();

  private record Chosen(String trace, String span) {}

  /**
   * @param id of the command or event
   */
  Span start(SpanBuilder span, UUID correlationId, UUID id) {
    chosen.set(new Chosen(TraceIds.trace(correlationId), TraceIds.span(id)));
    try {
      return span.startSpan();
    } finally {
      chosen.remove();
    }
  }

  @Override
  public String generateTraceId() {
    Chosen ids = chosen.get();
    return ids == null ? random.generateTraceId() : ids.trace();
  }

  @Override
  public String generateSpanId() {
    Chosen ids = chosen.get();
    return ids == null ? random.generateSpanId() : ids.span();
  }
}
