package org.tapeline.notify;

import org.tapeline.journal.Subscription;

/** The events that are read and lead to no notice today; any other unknown one is parked. */
final class TellsNobody {
  private static final String SIZING = "org.tapeline.sizing.";
  private static final String FITTING = "org.tapeline.fitting.";
  private static final String INVENTORY = "org.tapeline.inventory.";

  private TellsNobody() {}

  static Subscription declareOn(Subscription subscription) {
    return subscription
        .ignoring(
            SIZING + "player-moved.v1",
            SIZING + "head-measured.v1",
            SIZING + "head-corrected.v1",
            SIZING + "size-advised.v1",
            SIZING + "chart-published.v1",
            SIZING + "remeasure-due.v1",
            SIZING + "size-mix-forecast.v1")
        .ignoring(
            FITTING + "session-opened.v1",
            FITTING + "helmet-tried.v1",
            FITTING + "check-recorded.v1",
            FITTING + "adjustment-made.v1",
            FITTING + "fit-passed.v1",
            FITTING + "fit-failed.v1",
            FITTING + "session-abandoned.v1",
            FITTING + "remedy-passed-over.v1",
            FITTING + "entry-corrected.v1",
            FITTING + "session-paused.v1",
            FITTING + "session-resumed.v1",
            FITTING + "pass-taken-back.v1",
            FITTING + "conditions-recorded.v1",
            FITTING + "hair-changed.v1",
            FITTING + "concussion-suspected.v1",
            FITTING + "return-cleared.v1",
            FITTING + "fit-day-announced.v1",
            FITTING + "fit-day-moved.v1",
            FITTING + "fit-day-cancelled.v1")
        .ignoring(
            INVENTORY + "helmet-received.v1",
            INVENTORY + "helmet-issued.v1",
            INVENTORY + "issue-refused.v1",
            INVENTORY + "helmet-returned.v1",
            INVENTORY + "helmet-moved.v1",
            INVENTORY + "damage-reported.v1",
            INVENTORY + "helmet-quarantined.v1",
            INVENTORY + "helmet-inspected.v1",
            INVENTORY + "helmet-ordered.v1",
            INVENTORY + "hold-placed.v1",
            INVENTORY + "hold-lifted.v1",
            INVENTORY + "helmet-put-aside.v1",
            INVENTORY + "helmet-held.v1",
            INVENTORY + "helmet-freed.v1",
            INVENTORY + "helmet-sent-out.v1",
            INVENTORY + "helmet-came-back.v1",
            INVENTORY + "helmet-recertified.v1",
            INVENTORY + "helmet-retired.v1",
            INVENTORY + "batch-sent.v1",
            INVENTORY + "batch-received-back.v1",
            INVENTORY + "batch-closed.v1",
            INVENTORY + "replacement-reserved.v1",
            INVENTORY + "replacement-missing.v1",
            INVENTORY + "reservation-released.v1",
            INVENTORY + "part-moved.v1",
            INVENTORY + "part-used.v1",
            INVENTORY + "plan-committed.v1",
            INVENTORY + "plan-released.v1",
            INVENTORY + "stock-counted.v1");
  }
}
