package org.tapeline.notify.staff;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import org.jboss.logging.Logger;

/** Looks again and again whether a depot's requests have waited long enough for one another. */
@ApplicationScoped
public class WhenRestockHasWaitedThenTellDepot {
  private static final Logger LOG = Logger.getLogger(WhenRestockHasWaitedThenTellDepot.class);

  private final DepotNotices notices;
  private final Clock clock;

  WhenRestockHasWaitedThenTellDepot(DepotNotices notices, Clock clock) {
    this.notices = notices;
    this.clock = clock;
  }

  @Scheduled(
      every = "{tapeline.depot.every}",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  void look() {
    look(clock.instant());
  }

  /** Tells every depot for which something is due at a time. */
  public void look(Instant now) {
    for (String depot : notices.due(now)) {
      try {
        notices.tell(depot, now);
      } catch (RuntimeException e) {
        LOG.warnf("%s could not be told of restock requests, trying again: %s", depot, e);
      }
    }
  }
}
