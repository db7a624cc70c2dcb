package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** A case that is over keeps nothing back. */
@ApplicationScoped
public class WhenRefitClosedThenRelease {
  private final Reservations reservations;

  WhenRefitClosedThenRelease(Reservations reservations) {
    this.reservations = reservations;
  }

  /** What is read of fitting's {@code refit-closed}. */
  record RefitClosed(UUID refitCase, String outcome) {}

  public void declareOn(Subscription subscription) {
    subscription.on("org.tapeline.fitting.refit-closed.v1", RefitClosed.class, this::closed);
  }

  private void closed(RefitClosed d, ReceivedEvent event) {
    reservations.close(d.refitCase(), d.outcome().equals("fitted"), Cause.of(event, "close"));
  }
}
