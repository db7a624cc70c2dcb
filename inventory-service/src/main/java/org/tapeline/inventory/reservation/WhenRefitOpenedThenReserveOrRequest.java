package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** A new re-fit case gets the best replacements there are, or has them brought. */
@ApplicationScoped
public class WhenRefitOpenedThenReserveOrRequest {
  private final Cases cases;
  private final Reservations reservations;

  WhenRefitOpenedThenReserveOrRequest(Cases cases, Reservations reservations) {
    this.cases = cases;
    this.reservations = reservations;
  }

  /** What is read of fitting's {@code refit-opened}. */
  record RefitOpened(
      UUID refitCase, UUID player, String field, String urgency, List<Need> needs, Instant at) {}

  public void declareOn(Subscription subscription) {
    subscription.on("org.tapeline.fitting.refit-opened.v1", RefitOpened.class, this::opened);
  }

  private void opened(RefitOpened d, ReceivedEvent event) {
    cases.open(d.refitCase(), d.player(), d.field(), d.urgency(), d.needs(), d.at());
    reservations.reserveOrRequest(d.refitCase(), "", Cause.of(event, "reserve"));
  }
}
