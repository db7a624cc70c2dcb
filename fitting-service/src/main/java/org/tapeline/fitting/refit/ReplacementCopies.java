package org.tapeline.fitting.refit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.helmet.HelmetReservation;
import org.tapeline.fitting.session.Need;
import org.tapeline.journal.Subscription;

/** Copies what inventory says of replacements to what the cases need. */
final class ReplacementCopies {
  private static final String OF = "org.tapeline.inventory.";
  static final String RESERVED = OF + "replacement-reserved.v1";
  static final String MISSING = OF + "replacement-missing.v1";
  static final String RELEASED = OF + "reservation-released.v1";

  private ReplacementCopies() {}

  record ReplacementReserved(
      UUID refitCase, UUID player, Need need, Optional<String> tag, Instant readyAt) {}

  record ReplacementMissing(UUID refitCase, List<Need> needs, Instant expectedAt) {}

  record ReservationReleased(UUID refitCase, Optional<String> tag, Optional<String> item) {}

  static void declareOn(Subscription copies) {
    copies
        .events("inventory.events")
        .on(RESERVED, ReplacementReserved.class, (d, e) -> reserved(d))
        .on(MISSING, ReplacementMissing.class, (d, e) -> missing(d))
        .on(RELEASED, ReservationReleased.class, (d, e) -> released(d));
  }

  static void reserved(ReplacementReserved d) {
    d.tag().ifPresent(tag -> HelmetReservation.keep(d.refitCase(), tag, d.player()));
    RefitNeedRow.find(d.refitCase(), d.need()).ifPresent(row -> row.kept(d.tag(), d.readyAt()));
  }

  static void missing(ReplacementMissing d) {
    for (Need need : d.needs()) {
      RefitNeedRow.find(d.refitCase(), need).ifPresent(row -> row.expected(d.expectedAt()));
    }
  }

  /** The slot stays: what is kept or ordered instead is heard of next. */
  static void released(ReservationReleased d) {
    d.tag().ifPresent(tag -> HelmetReservation.release(d.refitCase(), tag));
    RefitNeedRow.of(d.refitCase()).stream()
        .filter(
            row ->
                d.tag().filter(tag -> tag.equals(row.tag)).isPresent()
                    || d.item().filter(item -> item.equals(row.needKey)).isPresent())
        .forEach(RefitNeedRow::unknown);
  }
}
