package org.tapeline.notify.unreached;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import org.jboss.logging.Logger;

/** Looks every few seconds whether staff are to be told whom they should reach. */
@ApplicationScoped
public class WhenPeopleAreNotReachedThenTellStaff {
  private static final Logger LOG = Logger.getLogger(WhenPeopleAreNotReachedThenTellStaff.class);

  private final NotReachedNotices notices;
  private final Clock clock;

  WhenPeopleAreNotReachedThenTellStaff(NotReachedNotices notices, Clock clock) {
    this.notices = notices;
    this.clock = clock;
  }

  @Scheduled(
      every = "{tapeline.escalation.every}",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  void look() {
    look(clock.instant());
  }

  /** Tells everybody whose matters waited long enough at a time. */
  public void look(Instant now) {
    for (String recipient : notices.due(now)) {
      try {
        notices.tell(recipient, now);
      } catch (RuntimeException e) {
        LOG.warnf("%s could not be told whom to reach, trying again: %s", recipient, e);
      }
    }
  }
}
