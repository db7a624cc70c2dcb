package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.fitday.TakenPlace;
import org.tapeline.fitting.fitday.WaitingCases;
import org.tapeline.journal.Cause;

/**
 * Fit days came, went or moved: every open case without a slot that suits looks for one. That
 * includes a case whose slot went by, and one whose replacement arrives after its slot.
 */
@ApplicationScoped
public class WhenFitDaysChangeThenBookCases implements WaitingCases {
  private final RefitBookings bookings;

  WhenFitDaysChangeThenBookCases(RefitBookings bookings) {
    this.bookings = bookings;
  }

  @Override
  public void bookWaiting(Cause cause) {
    bookings.bookWaiting(refitCase -> cause);
  }

  @Override
  public void holdStill(Collection<UUID> refitCases) {
    RefitCaseRow.lockedOpen(refitCases);
  }

  @Override
  public void bookAgain(UUID fitDay, List<TakenPlace> displaced, String why, Cause cause) {
    bookings.bookAgain(fitDay, displaced, why, cause);
  }
}
