package org.tapeline.journal.quarkus.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.opentelemetry.api.trace.StatusCode;
import io.opentelemetry.sdk.testing.exporter.InMemorySpanExporter;
import io.opentelemetry.sdk.trace.SdkTracerProvider;
import io.opentelemetry.sdk.trace.data.SpanData;
import io.opentelemetry.sdk.trace.export.SimpleSpanProcessor;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.TraceIds;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.watch.JournalWatch;

class TracingWatchTest {
  private final InMemorySpanExporter spans = InMemorySpanExporter.create();
  private final ChainIds ids = new ChainIds();
  private final JournalWatch watch =
      new TracingWatch(
          SdkTracerProvider.builder()
              .setIdGenerator(ids)
              .addSpanProcessor(SimpleSpanProcessor.create(spans))
              .build()
              .get("test"),
          ids);
  private final UUID command = UuidV7.next();

  @Test
  @DisplayName("A command begins the trace whose id is the correlation id")
  void command() {
    watch.command(command, "count", work(() -> new Answer(200, "{}")));
    SpanData span = only("count");
    assertThat(span.getTraceId()).isEqualTo(TraceIds.trace(command));
    assertThat(span.getSpanId()).isEqualTo(TraceIds.span(command));
    assertThat(span.getParentSpanContext().isValid()).isFalse();
  }

  @Test
  @DisplayName("A failure is told by its kind, without words that may be of a person")
  void failure() {
    fails(new IllegalStateException("Ada Quillfeather has no helmet"));
    assertThat(only("count").getStatus().getStatusCode()).isEqualTo(StatusCode.ERROR);
    assertThat(only("count").toString())
        .contains("IllegalStateException")
        .doesNotContain("Quillfeather");
  }

  @Test
  @DisplayName("A refusal is no failure")
  void refusal() {
    fails(Problem.conflict("no", "Ada Quillfeather has no helmet"));
    assertThat(only("count").getStatus().getStatusCode()).isEqualTo(StatusCode.UNSET);
    assertThat(only("count").toString()).doesNotContain("Quillfeather");
  }

  private void fails(RuntimeException why) {
    assertThatThrownBy(
            () ->
                watch.command(
                    command,
                    "count",
                    work(
                        () -> {
                          throw why;
                        })))
        .isSameAs(why);
  }

  @Test
  @DisplayName("An event that a peer's event leads to at once is a child of what is done with that")
  void withinAnApplication() {
    ReceivedEvent received = received();
    RecordedEvent led = recorded(received.id());
    watch.applying(received, () -> watch.appended(List.of(led)).run());
    SpanData applied = only("apply counted");
    assertThat(applied.getTraceId()).isEqualTo(TraceIds.trace(command));
    assertThat(applied.getParentSpanId()).isEqualTo(TraceIds.span(received.id()));
    SpanData event = only("counted");
    assertThat(event.getTraceId()).isEqualTo(TraceIds.trace(command));
    assertThat(event.getSpanId()).isEqualTo(TraceIds.span(led.id()));
    assertThat(event.getParentSpanId()).isEqualTo(applied.getSpanId());
  }

  @Test
  @DisplayName("An event that something leads to later is a child of that")
  void later() {
    UUID cause = UuidV7.next();
    watch.appended(List.of(recorded(cause))).run();
    assertThat(only("counted").getTraceId()).isEqualTo(TraceIds.trace(command));
    assertThat(only("counted").getParentSpanId()).isEqualTo(TraceIds.span(cause));
  }

  @Test
  @DisplayName("An event whose transaction was rolled back is not told")
  void rolledBack() {
    watch.appended(List.of(recorded(command)));
    assertThat(spans.getFinishedSpanItems()).isEmpty();
  }

  private SpanData only(String name) {
    List<SpanData> found =
        spans.getFinishedSpanItems().stream().filter(s -> s.getName().equals(name)).toList();
    assertThat(found).as(name).hasSize(1);
    return found.getFirst();
  }

  private RecordedEvent recorded(UUID cause) {
    Counted data = new Counted("s", 1);
    String type = JournalFixture.COUNTED;
    return new RecordedEvent(
        1, UuidV7.next(), "count-s", 1, type, Instant.now(), command, cause, data);
  }

  private ReceivedEvent received() {
    return new ReceivedEvent(
        "test.events",
        UuidV7.next(),
        JournalFixture.COUNTED,
        "count-s",
        1,
        "s",
        Instant.now(),
        command,
        command,
        null);
  }

  private static JournalWatch.Work work(Supplier<Answer> work) {
    return new JournalWatch.Work() {
      @Override
      public Answer get() {
        return work.get();
      }

      @Override
      public boolean repeated() {
        return false;
      }
    };
  }
}
