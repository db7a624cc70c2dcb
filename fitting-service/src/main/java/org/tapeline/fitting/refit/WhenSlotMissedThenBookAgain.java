package org.tapeline.fitting.refit;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.UuidV7;

/**
 * A slot went by and the case is still open: nobody came, or the fit was not finished. It is booked
 * again on the next fit day, and so is whoever waited for a slot that was given back. For comfort
 * only: the player stays "do not wear" all the while.
 */
@ApplicationScoped
public class WhenSlotMissedThenBookAgain {
  private final RefitBookings bookings;

  WhenSlotMissedThenBookAgain(RefitBookings bookings) {
    this.bookings = bookings;
  }

  @Scheduled(
      every = "{tapeline.refit.look-for-missed}",
      delayed = "1m",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  @Transactional
  void bookMissedAgain() {
    bookings.bookWaiting(refitCase -> missed());
  }

  /** Each begins a chain of its own: nothing but the clock led to it. */
  private static Cause missed() {
    UUID id = UuidV7.next();
    return new Cause(id, id, "missed");
  }
}
