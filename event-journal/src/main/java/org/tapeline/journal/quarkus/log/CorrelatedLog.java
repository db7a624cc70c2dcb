package org.tapeline.journal.quarkus.log;

import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.logging.MDC;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.watch.JournalWatch;

/**
 * Has the log say to which chain belongs what is done: every line that is written on the way
 * carries the correlation id.
 */
public final class CorrelatedLog implements JournalWatch {
  public static final String KEY = "correlationId";

  @Override
  public Answer command(UUID id, String command, Work work) {
    return within(id, work);
  }

  @Override
  public void applying(ReceivedEvent event, Runnable effect) {
    within(
        event.correlationId(),
        () -> {
          effect.run();
          return event;
        });
  }

  @Override
  public <T> T step(String name, Cause cause, Supplier<T> work) {
    return within(cause.correlationId(), work);
  }

  private static <T> T within(UUID correlationId, Supplier<T> work) {
    Object before = MDC.get(KEY);
    MDC.put(KEY, correlationId.toString());
    try {
      return work.get();
    } finally {
      if (before == null) {
        MDC.remove(KEY);
      } else {
        MDC.put(KEY, before);
      }
    }
  }
}
