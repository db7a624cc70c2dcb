package org.tapeline.notify;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.rebuild.Kept;
import org.tapeline.notify.cause.Fits;
import org.tapeline.notify.cause.RefitCaseEvents;
import org.tapeline.notify.cause.WhenPeopleChangeThenLookAgain;
import org.tapeline.notify.help.HelpAnswered;
import org.tapeline.notify.help.HelpAsked;
import org.tapeline.notify.notice.NoticeAcknowledged;
import org.tapeline.notify.notice.NoticeCancelled;
import org.tapeline.notify.notice.NoticeEscalated;
import org.tapeline.notify.notice.NoticeMovedOn;
import org.tapeline.notify.notice.NoticeRaised;
import org.tapeline.notify.notice.NoticeSent;
import org.tapeline.notify.notice.NoticeUndeliverable;
import org.tapeline.notify.notice.PersonReached;
import org.tapeline.notify.optout.OptedIn;
import org.tapeline.notify.optout.OptedOut;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.restock.RestockCopies;
import org.tapeline.notify.retention.WhenPlayerLeavesThenNoteTheDay;
import org.tapeline.notify.staff.DepotNotices;
import org.tapeline.notify.trace.HeardEvents;
import org.tapeline.notify.wish.WishesSet;

/** What the service says, and what it listens to. */
@Singleton
public class Wiring {

  @Produces
  @Singleton
  EventTypes eventTypes() {
    return EventTypes.of("notify")
        .with("notice-raised", 1, NoticeRaised.class)
        .with("notice-sent", 1, NoticeSent.class)
        .with("notice-moved-on", 1, NoticeMovedOn.class)
        .with("notice-undeliverable", 1, NoticeUndeliverable.class)
        .with("notice-acknowledged", 1, NoticeAcknowledged.class)
        .with("notice-cancelled", 1, NoticeCancelled.class)
        .with("notice-escalated", 1, NoticeEscalated.class)
        .with("person-reached", 1, PersonReached.class)
        .with("help-asked", 1, HelpAsked.class)
        .with("help-answered", 1, HelpAnswered.class)
        .with("opted-out", 1, OptedOut.class)
        .with("opted-in", 1, OptedIn.class)
        .with("wishes-set", 1, WishesSet.class);
  }

  @Produces
  @Singleton
  Kept kept() {
    String covers = "what a notice covers and whom it is about: found out when it was raised";
    String tries = "tries of sending, as they went";
    String telling = "how far telling has come, and until when it waits";
    String staff = "what staff were told, and when, so that it is told once";
    return Kept.besideTheJournal()
        .table("notice_cover", covers)
        .table("notice_cause", covers)
        .table("notice_player", covers)
        .table("notice_text", "the words as they were sent, until they are deleted")
        .table("notice_try", tries)
        .table("text_message", tries)
        .table("receipt_seen", tries)
        .table("bounce", tries)
        .table("refit_case", telling)
        .table("fit", telling)
        .table("recheck", telling)
        .table("people_change", telling)
        .table("restock_told", staff)
        .table("depot_matter", staff)
        .table("notice_escalation", staff)
        .table("staff_matter", staff)
        .table("staff_pace", staff)
        .table("digest", staff)
        .table("heard_event", "what was heard, until it is deleted")
        .table("retention_run", "what was deleted");
  }

  @Produces
  @Singleton
  Subscription subscription(
      WhenPeopleChangeThenLookAgain people,
      RefitCaseEvents refits,
      Fits fits,
      Places places,
      RestockCopies restocks,
      DepotNotices depots,
      HeardEvents heard,
      WhenPlayerLeavesThenNoteTheDay leaving) {
    Subscription all =
        Subscription.named("notify")
            .latest("people")
            .events("sizing.events")
            .events("fitting.events")
            .events("inventory.events");
    all.before(heard::note);
    people.declareOn(all);
    refits.declareOn(all);
    fits.declareOn(all);
    places.declareOn(all);
    depots.declareOn(all);
    restocks.declareOn(all);
    leaving.declareOn(all);
    return TellsNobody.declareOn(all);
  }
}
