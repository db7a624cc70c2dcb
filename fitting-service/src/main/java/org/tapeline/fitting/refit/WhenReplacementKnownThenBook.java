package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.helmet.HelmetReservation;
import org.tapeline.fitting.session.Need;
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

  record ReplacementReserved(
      UUID refitCase, UUID player, Need need, Optional<String> tag, Instant readyAt) {}

  record ReplacementMissing(UUID refitCase, List<Need> needs, Instant expectedAt) {}

  record ReservationReleased(UUID refitCase, Optional<String> tag, Optional<String> item) {}

  public void declareOn(Subscription subscription) {
    String of = "org.tapeline.inventory.";
    subscription
        .on(of + "replacement-reserved.v1", ReplacementReserved.class, this::reserved)
        .on(of + "replacement-missing.v1", ReplacementMissing.class, this::missing)
        .on(of + "reservation-released.v1", ReservationReleased.class, (d, e) -> released(d));
  }

  private void reserved(ReplacementReserved d, ReceivedEvent event) {
    d.tag().ifPresent(tag -> HelmetReservation.keep(d.refitCase(), tag, d.player()));
    RefitNeedRow.find(d.refitCase(), d.need()).ifPresent(row -> row.kept(d.tag(), d.readyAt()));
    book(event);
  }

  private void missing(ReplacementMissing d, ReceivedEvent event) {
    for (Need need : d.needs()) {
      RefitNeedRow.find(d.refitCase(), need).ifPresent(row -> row.expected(d.expectedAt()));
    }
    book(event);
  }

  private void book(ReceivedEvent event) {
    bookings.bookWaiting(refitCase -> Cause.of(event, "arrival"));
  }

  /** The slot stays: what is kept or ordered instead is heard of next. */
  private static void released(ReservationReleased d) {
    d.tag().ifPresent(tag -> HelmetReservation.release(d.refitCase(), tag));
    RefitNeedRow.of(d.refitCase()).stream()
        .filter(
            row ->
                d.tag().filter(tag -> tag.equals(row.tag)).isPresent()
                    || d.item().filter(item -> item.equals(row.needKey)).isPresent())
        .forEach(RefitNeedRow::unknown);
  }
}
