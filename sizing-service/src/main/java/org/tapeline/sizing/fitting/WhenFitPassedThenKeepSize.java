package org.tapeline.sizing.fitting;

import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.journal.Subscription;

/** Keeps which size really passed, to show it beside the advice. */
@ApplicationScoped
public class WhenFitPassedThenKeepSize {

  /** Sizing handles one event of fitting and names the others, so that a new one is not missed. */
  public Subscription declareOn(Subscription subscription) {
    return subscription
        .events("fitting.events")
        .on("org.tapeline.fitting.fit-passed.v1", FitPassed.class, (passed, event) -> keep(passed))
        .ignoring(
            "org.tapeline.fitting.session-opened.v1",
            "org.tapeline.fitting.helmet-tried.v1",
            "org.tapeline.fitting.check-recorded.v1",
            "org.tapeline.fitting.adjustment-made.v1",
            "org.tapeline.fitting.fit-failed.v1",
            "org.tapeline.fitting.session-abandoned.v1",
            "org.tapeline.fitting.signed-off.v1",
            "org.tapeline.fitting.sign-off-withdrawn.v1",
            "org.tapeline.fitting.sign-off-lapsed.v1",
            "org.tapeline.fitting.refit-opened.v1",
            "org.tapeline.fitting.refit-booked.v1",
            "org.tapeline.fitting.refit-closed.v1",
            "org.tapeline.fitting.fit-day-announced.v1",
            "org.tapeline.fitting.fit-day-cancelled.v1");
  }

  /** The newest wins: sessions of a player are streams of their own. */
  private static void keep(FitPassed passed) {
    PassedSize row = PassedSize.findById(passed.player());
    if (row == null) {
      row = new PassedSize();
      row.player = passed.player();
    } else if (row.at.isAfter(passed.at())) {
      return;
    }
    row.model = passed.model();
    row.size = passed.size();
    row.at = passed.at();
    row.persist();
  }
}
