package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/**
 * The helmet that was worn when a concussion was suspected is out of use until it was inspected.
 * Why stays with the fitting service: a helmet's record says nothing of anybody's health.
 */
@ApplicationScoped
public class WhenConcussionSuspectedThenSetAside {
  private final HelmetDesk desk;

  WhenConcussionSuspectedThenSetAside(HelmetDesk desk) {
    this.desk = desk;
  }

  /** What is read of fitting's {@code concussion-suspected}. */
  record ConcussionSuspected(Optional<String> tag, Instant at) {}

  public void declareOn(Subscription subscription) {
    subscription.on(
        "org.tapeline.fitting.concussion-suspected.v1", ConcussionSuspected.class, this::suspected);
  }

  private void suspected(ConcussionSuspected d, ReceivedEvent event) {
    d.tag()
        .ifPresent(
            tag -> desk.run(tag, new HelmetCommand.SetAside(d.at()), Cause.of(event, "set-aside")));
  }
}
