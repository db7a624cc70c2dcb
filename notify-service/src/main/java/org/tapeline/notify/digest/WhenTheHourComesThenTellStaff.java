package org.tapeline.notify.digest;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import org.jboss.logging.Logger;

/** Looks every minute whose day begins; what was missed while the service was down is made up. */
@ApplicationScoped
public class WhenTheHourComesThenTellStaff {
  private static final Logger LOG = Logger.getLogger(WhenTheHourComesThenTellStaff.class);

  private final Digests digests;
  private final Clock clock;

  WhenTheHourComesThenTellStaff(Digests digests, Clock clock) {
    this.digests = digests;
    this.clock = clock;
  }

  @Scheduled(
      every = "{tapeline.digest.every}",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  void look() {
    look(clock.instant());
  }

  /** Tells every digest that is due at a time. */
  public void look(Instant now) {
    for (Digests.Due due : digests.due(now)) {
      try {
        digests.tell(due, now);
      } catch (RuntimeException e) {
        LOG.warnf("%s could not be told of the day, trying again: %s", due.recipient(), e);
      }
    }
  }
}
