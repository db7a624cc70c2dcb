package org.tapeline.journal;

import java.util.Objects;
import java.util.UUID;

/**
 * Why events are appended: a command from outside, or an event of a peer service. The ids of the
 * events are derived from it, so that doing the same step again makes the same ids.
 *
 * @param id the command's or the event's id
 * @param correlationId carried unchanged through every step that follows
 * @param step which step of this cause; two appends of one cause to one stream need different steps
 */
public record Cause(UUID id, UUID correlationId, String step) {

  public Cause {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(correlationId, "correlationId");
    Objects.requireNonNull(step, "step");
  }

  /** A command starts a chain of its own: its id is the correlation id too. */
  public static Cause command(UUID commandId) {
    return new Cause(commandId, commandId, "");
  }

  public static Cause of(ReceivedEvent event, String step) {
    return new Cause(event.id(), event.correlationId(), step);
  }

  /** An event of this very service that leads to more, in the same transaction. */
  public static Cause of(RecordedEvent event, String step) {
    return new Cause(event.id(), event.correlationId(), step);
  }

  public Cause step(String label) {
    return new Cause(id, correlationId, label);
  }
}
