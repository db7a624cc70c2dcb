package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.journal.Subscription;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.staff.FitterNotices;

/** What comes in on {@code fitting.events} about re-fit cases. */
@ApplicationScoped
public class RefitCaseEvents {
  private final RefitCases cases;
  private final FitterNotices fitters;

  RefitCaseEvents(RefitCases cases, FitterNotices fitters) {
    this.cases = cases;
    this.fitters = fitters;
  }

  public Subscription declareOn(Subscription subscription) {
    return subscription
        .on(
            "org.tapeline.fitting.refit-opened.v1",
            RefitOpened.class,
            (opened, event) -> {
              cases.on(opened, event);
              fitters.tell(
                  opened.refitCase(),
                  opened.player(),
                  opened.field(),
                  opened.team(),
                  opened.why(),
                  Urgency.of(opened.urgency()),
                  event);
            })
        .on("org.tapeline.fitting.refit-booked.v1", RefitBooked.class, cases::on)
        .on("org.tapeline.fitting.refit-unbooked.v1", RefitUnbooked.class, cases::on)
        .on("org.tapeline.fitting.refit-closed.v1", RefitClosed.class, cases::on);
  }
}
