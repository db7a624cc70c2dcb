package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.fitting.fitday.WaitingCases;
import org.tapeline.journal.Cause;

/**
 * Fit days came or went: every open case without a slot that suits looks for one, oldest first.
 * That includes a case whose slot went by, and one whose replacement arrives after its slot.
 */
@ApplicationScoped
public class WhenFitDayAnnouncedThenBookWaiting implements WaitingCases {
  private final RefitCases cases;

  WhenFitDayAnnouncedThenBookWaiting(RefitCases cases) {
    this.cases = cases;
  }

  @Override
  public void bookWaiting(Cause cause) {
    for (RefitCaseRow row : RefitCaseRow.allOpen()) {
      cases.bookIfReady(row.refitCase, cause);
    }
  }
}
