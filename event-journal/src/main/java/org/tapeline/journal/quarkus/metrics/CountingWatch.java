package org.tapeline.journal.quarkus.metrics;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.util.List;
import java.util.UUID;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandReused;
import org.tapeline.journal.EventTypeName;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.watch.JournalWatch;

/** Counts what this copy of the service does; over all copies the counts are added. */
public final class CountingWatch implements JournalWatch {
  private final MeterRegistry registry;

  public CountingWatch(MeterRegistry registry) {
    this.registry = registry;
  }

  @Override
  public Answer command(UUID id, String command, Work work) {
    Timer.Sample began = Timer.start(registry);
    String answer = "failed";
    try {
      Answer given = work.get();
      answer = work.repeated() ? "repeated" : "done";
      return given;
    } catch (RuntimeException e) {
      answer = refusal(e) ? "refused" : "failed";
      throw e;
    } finally {
      began.stop(
          Timer.builder("tapeline.commands")
              .description("Commands by kind and answer, and how long they took")
              .tags("command", command, "answer", answer)
              .register(registry));
    }
  }

  /** Whether the person is told what to do otherwise, and nothing is broken. */
  private static boolean refusal(RuntimeException e) {
    return e instanceof Problem problem && problem.status() < 500
        || e instanceof CommandReused
        || e instanceof StreamConflict;
  }

  @Override
  public Runnable appended(List<RecordedEvent> events) {
    return () -> events.forEach(event -> appended(event.type()).increment());
  }

  private Counter appended(String type) {
    return Counter.builder("tapeline.journal.appended.events")
        .description("Events of this service that were recorded, by kind")
        .tag("event", EventTypeName.parse(type).event())
        .register(registry);
  }

  @Override
  public void applying(ReceivedEvent event, Runnable effect) {
    effect.run();
    Counter.builder("tapeline.inbox.applied.events")
        .description("Events of peers that were applied; one that was tried again counts again")
        .tag("topic", event.topic())
        .register(registry)
        .increment();
  }

  @Override
  public void published(List<ProducerRecord<String, byte[]>> records) {
    Counter.builder("tapeline.relay.sent.records")
        .description("Records that reached Kafka; one that was sent again counts again")
        .register(registry)
        .increment(records.size());
  }
}
