package org.tapeline.inventory;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.inventory.advice.AdvisedSizes;
import org.tapeline.inventory.allocation.PlanEvent;
import org.tapeline.inventory.forecast.SizeForecasts;
import org.tapeline.inventory.helmet.HelmetEvent;
import org.tapeline.inventory.helmet.HelmetFits;
import org.tapeline.inventory.helmet.WhenConcussionSuspectedThenSetAside;
import org.tapeline.inventory.helmet.WhenSignedOffThenIssue;
import org.tapeline.inventory.hold.HoldEvent;
import org.tapeline.inventory.place.PlaceListed;
import org.tapeline.inventory.reconditioning.BatchEvent;
import org.tapeline.inventory.reservation.ReservationEvent;
import org.tapeline.inventory.reservation.WhenRefitClosedThenRelease;
import org.tapeline.inventory.reservation.WhenRefitOpenedThenReserveOrRequest;
import org.tapeline.inventory.restock.RestockEvent;
import org.tapeline.inventory.roster.PlayerFields;
import org.tapeline.inventory.stock.StockEvent;
import org.tapeline.inventory.stock.WhenFitPassedThenBookParts;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.rebuild.Kept;

/** What the service says, and what it listens to. */
@Singleton
public class Wiring {

  @Produces
  @Singleton
  EventTypes eventTypes() {
    return EventTypes.of("inventory")
        .with("place-listed", 1, PlaceListed.class)
        .with("helmet-ordered", 1, HelmetEvent.HelmetOrdered.class)
        .with("helmet-received", 1, HelmetEvent.HelmetReceived.class)
        .with("helmet-issued", 1, HelmetEvent.HelmetIssued.class)
        .with("issue-refused", 1, HelmetEvent.IssueRefused.class)
        .with("helmet-returned", 1, HelmetEvent.HelmetReturned.class)
        .with("helmet-moved", 1, HelmetEvent.HelmetMoved.class)
        .with("damage-reported", 1, HelmetEvent.DamageReported.class)
        .with("helmet-quarantined", 1, HelmetEvent.HelmetQuarantined.class)
        .with("helmet-inspected", 1, HelmetEvent.HelmetInspected.class)
        .with("helmet-held", 1, HelmetEvent.HelmetHeld.class)
        .with("helmet-freed", 1, HelmetEvent.HelmetFreed.class)
        .with("helmet-sent-out", 1, HelmetEvent.HelmetSentOut.class)
        .with("helmet-came-back", 1, HelmetEvent.HelmetCameBack.class)
        .with("helmet-recertified", 1, HelmetEvent.HelmetRecertified.class)
        .with("helmet-retired", 1, HelmetEvent.HelmetRetired.class)
        .with("replacement-reserved", 1, ReservationEvent.ReplacementReserved.class)
        .with("replacement-missing", 1, ReservationEvent.ReplacementMissing.class)
        .with("reservation-released", 1, ReservationEvent.ReservationReleased.class)
        .with("batch-sent", 1, BatchEvent.BatchSent.class)
        .with("batch-received-back", 1, BatchEvent.BatchReceivedBack.class)
        .with("batch-closed", 1, BatchEvent.BatchClosed.class)
        .with("part-used", 1, StockEvent.PartUsed.class)
        .with("part-moved", 1, StockEvent.PartMoved.class)
        .with("stock-counted", 1, StockEvent.StockCounted.class)
        .with("hold-placed", 1, HoldEvent.HoldPlaced.class)
        .with("hold-lifted", 1, HoldEvent.HoldLifted.class)
        .with("helmet-put-aside", 1, HoldEvent.HelmetPutAside.class)
        .with("plan-committed", 1, PlanEvent.PlanCommitted.class)
        .with("plan-released", 1, PlanEvent.PlanReleased.class)
        .with("restock-requested", 1, RestockEvent.RestockRequested.class)
        .with("restock-picked", 1, RestockEvent.RestockPicked.class)
        .with("restock-shipped", 1, RestockEvent.RestockShipped.class)
        .with("restock-received", 1, RestockEvent.RestockReceived.class)
        .with("restock-cancelled", 1, RestockEvent.RestockCancelled.class);
  }

  @Produces
  @Singleton
  Kept kept() {
    String cases = "what cases wait for and what is kept for them: decided there, under locks";
    String requests = "requests on their way, with what they are for";
    String plans = "plans as they were worked out, drafts among them";
    String holds = "holds, and how far each of their helmets has come";
    String batches = "batches, drafts among them, and what is packed";
    String desk = "what is being taken in at the desk, and tags that were given out";
    return Kept.besideTheJournal()
        .table("refit_case", cases)
        .table("case_need", cases)
        .table("reservation", cases)
        .table("restock", requests)
        .table("restock_cause", requests)
        .table("restock_taken", requests)
        .table("plan", plans)
        .table("plan_line", plans)
        .table("plan_left", plans)
        .table("planned_helmet", plans)
        .table("hold", holds)
        .table("hold_tag", holds)
        .table("hold_helmet", holds)
        .table("reconditioning_batch", batches)
        .table("reconditioning_line", batches)
        .table("reserved_tag", desk)
        .table("receiving", desk)
        .table("received_helmet", desk)
        .table("helmet_import", "which row of a file became which helmet")
        .table("damage_photo", "photos, which can be deleted")
        .table("part_to_check", "parts to look at, and who has looked");
  }

  @Produces
  @Singleton
  Subscription subscription(
      PlayerFields fields,
      SizeForecasts forecasts,
      AdvisedSizes advised,
      WhenRefitOpenedThenReserveOrRequest opened,
      WhenRefitClosedThenRelease closed,
      WhenSignedOffThenIssue signedOff,
      WhenConcussionSuspectedThenSetAside suspected,
      WhenFitPassedThenBookParts passed,
      HelmetFits fits) {
    Subscription all = Subscription.named("inventory");
    fields.declareOn(all);
    forecasts.declareOn(all);
    advised.declareOn(all);
    all.events("fitting.events");
    opened.declareOn(all);
    closed.declareOn(all);
    signedOff.declareOn(all);
    suspected.declareOn(all);
    passed.declareOn(all);
    fits.declareOn(all);
    String of = "org.tapeline.fitting.";
    return all.ignoring(
        of + "session-opened.v1",
        of + "check-recorded.v1",
        of + "adjustment-made.v1",
        of + "session-abandoned.v1",
        of + "remedy-passed-over.v1",
        of + "entry-corrected.v1",
        of + "session-paused.v1",
        of + "session-resumed.v1",
        of + "pass-taken-back.v1",
        of + "recheck-due.v1",
        of + "conditions-recorded.v1",
        of + "hair-changed.v1",
        of + "return-cleared.v1",
        of + "refit-booked.v1",
        of + "refit-unbooked.v1",
        of + "fit-day-announced.v1",
        of + "fit-day-moved.v1",
        of + "fit-day-cancelled.v1");
  }
}
