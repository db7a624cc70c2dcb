package org.tapeline.journal.quarkus.trace;

import io.opentelemetry.api.trace.Span;
import io.opentelemetry.api.trace.SpanBuilder;
import io.opentelemetry.api.trace.SpanContext;
import io.opentelemetry.api.trace.SpanKind;
import io.opentelemetry.api.trace.StatusCode;
import io.opentelemetry.api.trace.TraceFlags;
import io.opentelemetry.api.trace.TraceState;
import io.opentelemetry.api.trace.Tracer;
import io.opentelemetry.context.Context;
import io.opentelemetry.context.Scope;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.EventTypeName;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.TraceIds;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.watch.JournalWatch;

/**
 * Makes a chain a trace: spans for the command, for each event that was recorded, for its way to
 * Kafka and for what it leads to in each service. A span says kinds and ids and nothing of people.
 */
public final class TracingWatch implements JournalWatch {
  private final Tracer tracer;
  private final ChainIds ids;

  public TracingWatch(Tracer tracer, ChainIds ids) {
    this.tracer = tracer;
    this.ids = ids;
  }

  @Override
  public Answer command(UUID id, String command, Work work) {
    SpanBuilder span = tracer.spanBuilder(command).setNoParent();
    return within(ids.start(span, id, id), work);
  }

  /** Told after the commit, so that there is no span of an event that never was. */
  @Override
  public Runnable appended(List<RecordedEvent> events) {
    Context within = Context.current();
    return () -> events.forEach(event -> recorded(event, within));
  }

  private void recorded(RecordedEvent event, Context within) {
    SpanBuilder span =
        tracer
            .spanBuilder(name(event.type()))
            .setSpanKind(SpanKind.PRODUCER)
            .setParent(parent(within, event.correlationId(), event.causationId()))
            .setStartTimestamp(event.time())
            .setAttribute("tapeline.event.id", event.id().toString());
    ids.start(span, event.correlationId(), event.id()).end();
  }

  @Override
  public void applying(ReceivedEvent event, Runnable effect) {
    Span span =
        tracer
            .spanBuilder("apply " + name(event.type()))
            .setSpanKind(SpanKind.CONSUMER)
            .setParent(remote(event.correlationId(), event.id()))
            .startSpan();
    within(
        span,
        () -> {
          effect.run();
          return span;
        });
  }

  /** From when it was recorded until Kafka had it. */
  @Override
  public void published(List<ProducerRecord<String, byte[]>> records) {
    for (ProducerRecord<String, byte[]> record : records) {
      UUID correlationId = UUID.fromString(header(record, "ce_correlationid"));
      UUID id = UUID.fromString(header(record, "ce_id"));
      tracer
          .spanBuilder("publish " + name(header(record, "ce_type")))
          .setSpanKind(SpanKind.PRODUCER)
          .setParent(remote(correlationId, id))
          .setStartTimestamp(Instant.parse(header(record, "ce_time")))
          .startSpan()
          .end();
    }
  }

  @Override
  public <T> T step(String name, Cause cause, Supplier<T> work) {
    return within(
        tracer.spanBuilder(name).setParent(remote(cause.correlationId(), cause.id())).startSpan(),
        work);
  }

  private static <T> T within(Span span, Supplier<T> work) {
    Scope current = span.makeCurrent();
    try {
      return work.get();
    } catch (RuntimeException e) {
      // Its message may hold what a person typed.
      span.setAttribute("error.type", e.getClass().getName());
      if (!(e instanceof Problem problem) || problem.status() >= 500) {
        span.setStatus(StatusCode.ERROR);
      }
      throw e;
    } finally {
      current.close();
      span.end();
    }
  }

  /** What is going on, where it belongs to the chain; else what the event follows from. */
  private static Context parent(Context within, UUID correlationId, UUID causationId) {
    String going = Span.fromContext(within).getSpanContext().getTraceId();
    return going.equals(TraceIds.trace(correlationId))
        ? within
        : remote(correlationId, causationId);
  }

  private static Context remote(UUID correlationId, UUID id) {
    return Context.root()
        .with(
            Span.wrap(
                SpanContext.createFromRemoteParent(
                    TraceIds.trace(correlationId),
                    TraceIds.span(id),
                    TraceFlags.getSampled(),
                    TraceState.getDefault())));
  }

  private static String name(String type) {
    return EventTypeName.parse(type).event();
  }

  private static String header(ProducerRecord<String, byte[]> record, String name) {
    return new String(record.headers().lastHeader(name).value(), StandardCharsets.UTF_8);
  }
}
