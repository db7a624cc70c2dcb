package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.fitting.fitday.FitDays;
import org.tapeline.fitting.fitday.WaitingCases;
import org.tapeline.journal.Cause;

/**
 * Books every open case that has no slot, oldest first, when fit days are announced or cancelled.
 */
@ApplicationScoped
public class WhenFitDaysChangeThenBookWaiting implements WaitingCases {
  private final RefitCases cases;
  private final FitDays fitDays;

  WhenFitDaysChangeThenBookWaiting(RefitCases cases, FitDays fitDays) {
    this.cases = cases;
    this.fitDays = fitDays;
  }

  @Override
  public void bookWaiting(Cause cause) {
    for (RefitCaseRow row : RefitCaseRow.open()) {
      if (fitDays.bookingOf(row.refitCase).isEmpty()) {
        cases.bookIfReady(row.refitCase, cause);
      }
    }
  }
}
