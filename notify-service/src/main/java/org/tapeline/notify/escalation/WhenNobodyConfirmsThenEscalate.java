package org.tapeline.notify.escalation;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Looks every few seconds for notices that nobody confirmed in time. */
@ApplicationScoped
public class WhenNobodyConfirmsThenEscalate {
  private static final Logger LOG = Logger.getLogger(WhenNobodyConfirmsThenEscalate.class);
  private static final Duration AGAIN = Duration.ofMinutes(1);

  private final EscalationQueue queue;
  private final Escalations escalations;
  private final Clock clock;

  WhenNobodyConfirmsThenEscalate(EscalationQueue queue, Escalations escalations, Clock clock) {
    this.queue = queue;
    this.escalations = escalations;
    this.clock = clock;
  }

  @Scheduled(
      every = "{tapeline.escalation.every}",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  void look() {
    look(clock.instant());
  }

  /** Takes every step that is due at a time. */
  public void look(Instant now) {
    boolean more = true;
    while (more) {
      EscalationQueue.Glance glance = queue.glance(now);
      glance.due().forEach(notice -> look(notice, now));
      more = glance.more();
    }
  }

  private void look(UUID notice, Instant now) {
    try {
      escalations.look(notice, now);
    } catch (RuntimeException e) {
      LOG.warnf("Notice %s cannot be followed up, trying again: %s", notice, e);
      queue.putOff(notice, now.plus(AGAIN));
    }
  }
}
