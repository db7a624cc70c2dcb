package org.tapeline.notify.cause;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;
import org.tapeline.journal.quarkus.Serving;

/**
 * Looks twice a second for what waited long enough, for its date or for others, and for whose
 * people changed: a "do not wear" is never held back longer. A thread of its own, since the
 * scheduler's finest step is a second.
 */
@ApplicationScoped
public class LateBookings {
  /** After everything that the work needs has started. */
  private static final int LAST = Integer.MAX_VALUE;

  private static final Logger LOG = Logger.getLogger(LateBookings.class);

  /** Few: what Hibernate holds of a transaction is looked through again before each query. */
  private static final int AT_ONCE = 10;

  private static final long BETWEEN_MILLIS = 500;

  private final RefitCases cases;
  private final Fits fits;
  private final SecondLook second;
  private final CountDownLatch stopping = new CountDownLatch(1);

  LateBookings(RefitCases cases, Fits fits, SecondLook second) {
    this.cases = cases;
    this.fits = fits;
    this.second = second;
  }

  void start(@Observes @Priority(LAST) StartupEvent event, Serving serving) {
    if (serving.here()) {
      Thread.ofPlatform().name("late-bookings").daemon().start(this::run);
    }
  }

  void stop(@Observes ShutdownEvent event) {
    stopping.countDown();
  }

  private void run() {
    while (!stopped()) {
      try {
        while (cases.lookAtWaiting(AT_ONCE) == AT_ONCE) {
          LOG.debug("More cases are waiting");
        }
        while (fits.lookAtWaiting(AT_ONCE) == AT_ONCE) {
          LOG.debug("More fits are waiting");
        }
        second.noteWhoIsAtWork();
        while (second.look()) {
          LOG.debug("People of more players changed");
        }
      } catch (RuntimeException e) {
        LOG.warnf("Waiting cases could not be looked at, trying again: %s", e);
      }
    }
  }

  private boolean stopped() {
    try {
      return stopping.await(BETWEEN_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    }
  }
}
