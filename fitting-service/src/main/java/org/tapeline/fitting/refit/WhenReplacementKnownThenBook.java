package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.fitting.refit.ReplacementCopies.ReplacementMissing;
import org.tapeline.fitting.refit.ReplacementCopies.ReplacementReserved;
import org.tapeline.fitting.refit.ReplacementCopies.ReservationReleased;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** What a case needs has a day on which it is there: the re-fit is booked for then or later. */
@ApplicationScoped
public class WhenReplacementKnownThenBook {
  private final RefitBookings bookings;

  WhenReplacementKnownThenBook(RefitBookings bookings) {
    this.bookings = bookings;
  }

  public void declareOn(Subscription subscription) {
    subscription
        .on(ReplacementCopies.RESERVED, ReplacementReserved.class, this::reserved)
        .on(ReplacementCopies.MISSING, ReplacementMissing.class, this::missing)
        .on(
            ReplacementCopies.RELEASED,
            ReservationReleased.class,
            (d, e) -> ReplacementCopies.released(d));
  }

  private void reserved(ReplacementReserved d, ReceivedEvent event) {
    ReplacementCopies.reserved(d);
    book(event);
  }

  private void missing(ReplacementMissing d, ReceivedEvent event) {
    ReplacementCopies.missing(d);
    book(event);
  }

  private void book(ReceivedEvent event) {
    bookings.bookWaiting(refitCase -> Cause.of(event, "arrival"));
  }
}
