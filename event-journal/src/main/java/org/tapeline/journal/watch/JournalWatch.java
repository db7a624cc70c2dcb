package org.tapeline.journal.watch;

import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.apache.kafka.clients.producer.ProducerRecord;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.RecordedEvent;

/**
 * Hears of every step on the way of an event, to count it or to follow it. It changes nothing, and
 * must neither throw nor wait.
 */
public interface JournalWatch {
  /** Nobody looks. */
  JournalWatch NONE = new JournalWatch() {};

  /** A command's work. */
  interface Work extends Supplier<Answer> {

    /** Asked afterwards: whether it had been done before, and only the answer was given again. */
    boolean repeated();
  }

  /**
   * Around a command, with all its tries.
   *
   * @param command its kind, such as {@code open-session}: one of a few dozen, never an id
   */
  default Answer command(UUID id, String command, Work work) {
    return work.get();
  }

  /**
   * Events that were appended in a transaction that is still open.
   *
   * @return is run once they are committed, and never when they are not
   */
  default Runnable appended(List<RecordedEvent> events) {
    return () -> {};
  }

  /** Around what a peer's event leads to here. The transaction may still be rolled back. */
  default void applying(ReceivedEvent event, Runnable effect) {
    effect.run();
  }

  /** Records that have reached Kafka. */
  default void published(List<ProducerRecord<String, byte[]>> records) {}

  /**
   * Around what the service does later, by itself, because of something.
   *
   * @param name such as {@code send by mail}: one of a few, never an id
   */
  default <T> T step(String name, Cause cause, Supplier<T> work) {
    return work.get();
  }

  /** This one around another. */
  default JournalWatch around(JournalWatch inner) {
    return new Both(this, inner);
  }
}
