package org.tapeline.fitting;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.fitting.concussion.ConcussionEvent.ConcussionSuspected;
import org.tapeline.fitting.concussion.ConcussionEvent.ReturnCleared;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayCancelled;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayMoved;
import org.tapeline.fitting.helmet.HelmetEvents;
import org.tapeline.fitting.helmet.HoldEvents;
import org.tapeline.fitting.part.PartEvents;
import org.tapeline.fitting.place.PlaceEvents;
import org.tapeline.fitting.recheck.RecheckCauseEvent.ConditionsRecorded;
import org.tapeline.fitting.recheck.RecheckCauseEvent.HairChanged;
import org.tapeline.fitting.refit.RefitEvent.RefitBooked;
import org.tapeline.fitting.refit.RefitEvent.RefitClosed;
import org.tapeline.fitting.refit.RefitEvent.RefitOpened;
import org.tapeline.fitting.refit.RefitEvent.RefitUnbooked;
import org.tapeline.fitting.refit.WhenIssueRefusedThenWithdraw;
import org.tapeline.fitting.refit.WhenReplacementKnownThenBook;
import org.tapeline.fitting.roster.SizingEvents;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.EntryCorrected;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;
import org.tapeline.fitting.session.FitSessionEvent.PassTakenBack;
import org.tapeline.fitting.session.FitSessionEvent.RemedyPassedOver;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;
import org.tapeline.fitting.session.FitSessionEvent.SessionOpened;
import org.tapeline.fitting.session.FitSessionEvent.SessionPaused;
import org.tapeline.fitting.session.FitSessionEvent.SessionResumed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignedOffVersions;
import org.tapeline.fitting.today.RecheckEvent.RecheckDue;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.rebuild.Kept;

/** What the service says, and what it listens to. */
@Singleton
public class Wiring {

  @Produces
  @Singleton
  EventTypes eventTypes() {
    return SignedOffVersions.declareOn(EventTypes.of("fitting"))
        .with("session-opened", 1, SessionOpened.class)
        .with("helmet-tried", 1, HelmetTried.class)
        .with("check-recorded", 1, CheckRecorded.class)
        .with("adjustment-made", 1, AdjustmentMade.class)
        .with("fit-passed", 1, FitPassed.class)
        .with("fit-failed", 1, FitFailed.class)
        .with("session-abandoned", 1, SessionAbandoned.class)
        .with("remedy-passed-over", 1, RemedyPassedOver.class)
        .with("entry-corrected", 1, EntryCorrected.class)
        .with("session-paused", 1, SessionPaused.class)
        .with("session-resumed", 1, SessionResumed.class)
        .with("pass-taken-back", 1, PassTakenBack.class)
        .with("sign-off-withdrawn", 1, SignOffWithdrawn.class)
        .with("sign-off-lapsed", 1, SignOffLapsed.class)
        .with("recheck-due", 1, RecheckDue.class)
        .with("conditions-recorded", 1, ConditionsRecorded.class)
        .with("hair-changed", 1, HairChanged.class)
        .with("concussion-suspected", 1, ConcussionSuspected.class)
        .with("return-cleared", 1, ReturnCleared.class)
        .with("refit-opened", 1, RefitOpened.class)
        .with("refit-booked", 1, RefitBooked.class)
        .with("refit-unbooked", 1, RefitUnbooked.class)
        .with("refit-closed", 1, RefitClosed.class)
        .with("fit-day-announced", 1, FitDayAnnounced.class)
        .with("fit-day-moved", 1, FitDayMoved.class)
        .with("fit-day-cancelled", 1, FitDayCancelled.class);
  }

  @Produces
  @Singleton
  Kept kept() {
    return Kept.besideTheJournal()
        .table("fit_slot", "who has which place: chosen there, under a lock")
        .table("owed_refit", "cases that wait for the player to come on the roster")
        .table("recheck_told", "what was told, so that it is told once")
        .table("set_aside", "what a phone entered and nobody may lose, and who has seen it");
  }

  @Produces
  @Singleton
  Subscription subscription(
      SizingEvents sizing,
      PlaceEvents places,
      HelmetEvents helmets,
      HoldEvents holds,
      PartEvents parts,
      WhenReplacementKnownThenBook replacements,
      WhenIssueRefusedThenWithdraw refusals) {
    Subscription all = Subscription.named("fitting");
    sizing.declareOn(all);
    helmets.declareOn(all);
    holds.declareOn(all);
    places.declareOn(all);
    parts.declareOn(all);
    replacements.declareOn(all);
    refusals.declareOn(all);
    return all.ignoring(
        "org.tapeline.inventory.helmet-ordered.v1",
        "org.tapeline.inventory.helmet-put-aside.v1",
        "org.tapeline.inventory.plan-committed.v1",
        "org.tapeline.inventory.plan-released.v1",
        "org.tapeline.inventory.batch-sent.v1",
        "org.tapeline.inventory.batch-received-back.v1",
        "org.tapeline.inventory.batch-closed.v1",
        "org.tapeline.inventory.restock-picked.v1",
        "org.tapeline.inventory.restock-shipped.v1",
        "org.tapeline.inventory.restock-cancelled.v1");
  }
}
