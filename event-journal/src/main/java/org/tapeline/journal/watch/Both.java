package org.tapeline.journal.watch;

import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.RecordedEvent;

/** Two that look at the same. */
record Both(JournalWatch outer, JournalWatch inner) implements JournalWatch {

  @Override
  public Answer command(UUID id, String command, Work work) {
    return outer.command(id, command, new Inner(id, command, work));
  }

  private final class Inner implements Work {
    private final UUID id;
    private final String command;
    private final Work work;

    Inner(UUID id, String command, Work work) {
      this.id = id;
      this.command = command;
      this.work = work;
    }

    @Override
    public Answer get() {
      return inner.command(id, command, work);
    }

    @Override
    public boolean repeated() {
      return work.repeated();
    }
  }

  @Override
  public Runnable appended(List<RecordedEvent> events) {
    Runnable one = outer.appended(events);
    Runnable other = inner.appended(events);
    return () -> {
      one.run();
      other.run();
    };
  }

  @Override
  public void applying(ReceivedEvent event, Runnable effect) {
    outer.applying(event, () -> inner.applying(event, effect));
  }

  @Override
  public <T> T step(String name, Cause cause, Supplier<T> work) {
    return outer.step(name, cause, () -> inner.step(name, cause, work));
  }

  @Override
  public void published(List<ProducerRecord<String, byte[]>> records) {
    outer.published(records);
    inner.published(records);
  }
}
