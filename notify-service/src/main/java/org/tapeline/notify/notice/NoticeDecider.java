package org.tapeline.notify.notice;

import java.util.UUID;
import org.tapeline.notify.notice.Notice.Acknowledged;
import org.tapeline.notify.notice.Notice.Cancelled;
import org.tapeline.notify.notice.Notice.None;
import org.tapeline.notify.notice.Notice.Raised;
import org.tapeline.notify.notice.Notice.Sent;
import org.tapeline.notify.notice.Notice.Undeliverable;
import org.tapeline.notify.notice.NoticeCommand.Acknowledge;
import org.tapeline.notify.notice.NoticeCommand.Cancel;
import org.tapeline.notify.notice.NoticeCommand.Escalate;
import org.tapeline.notify.notice.NoticeCommand.Exhaust;
import org.tapeline.notify.notice.NoticeCommand.GiveUp;
import org.tapeline.notify.notice.NoticeCommand.NoteDelivered;
import org.tapeline.notify.notice.NoticeCommand.NoteSent;
import org.tapeline.notify.notice.NoticeCommand.Raise;
import org.tapeline.notify.notice.NoticeCommand.Reach;

/**
 * The life of a notice. What was done before is accepted with no event, so that a repeat is
 * harmless; what cannot be undone (a mail that is out) is refused.
 */
public final class NoticeDecider {
  private NoticeDecider() {}

  public static Decision decide(Notice state, NoticeCommand command) {
    return switch (state) {
      case None none -> whenNone(command);
      case Raised raised -> whenRaised(raised, command);
      case Sent sent -> whenSent(sent, command);
      case Undeliverable given -> whenUndeliverable(given, command);
      case Acknowledged read -> whenAcknowledged(command);
      case Cancelled cancelled -> whenCancelled(command);
    };
  }

  public static Notice evolve(Notice state, NoticeEvent event) {
    return switch (event) {
      case NoticeRaised e -> new Raised(e.notice(), e.recipient());
      case NoticeSent e -> new Sent(e.notice(), e.recipient());
      case NoticeMovedOn e -> new Raised(e.notice(), e.recipient());
      case NoticeUndeliverable e -> new Undeliverable(e.notice(), e.recipient());
      case NoticeAcknowledged e -> new Acknowledged(e.notice(), e.recipient());
      case NoticeCancelled e -> new Cancelled(e.notice(), e.recipient());
      case NoticeEscalated e -> e.to() == null ? state : new Raised(e.notice(), e.recipient());
      case PersonReached e -> new Acknowledged(e.notice(), e.recipient());
    };
  }

  private static Decision whenNone(NoticeCommand command) {
    return switch (command) {
      case Raise raise -> Decision.accepted(raise.raised());
      case NoteSent c -> noSuchNotice();
      case GiveUp c -> noSuchNotice();
      case Exhaust c -> noSuchNotice();
      case NoteDelivered c -> noSuchNotice();
      case Acknowledge c -> noSuchNotice();
      case Cancel c -> noSuchNotice();
      case Escalate c -> noSuchNotice();
      case Reach c -> noSuchNotice();
    };
  }

  private static Decision whenRaised(Raised notice, NoticeCommand command) {
    return switch (command) {
      case Raise c -> Decision.accepted();
      case NoteSent c ->
          Decision.accepted(
              new NoticeSent(
                  notice.notice(), notice.recipient(), c.channel(), c.attempt(), c.at()));
      case GiveUp c -> Decision.accepted(given(notice.notice(), notice.recipient(), c));
      case Exhaust c -> Decision.accepted(exhausted(notice.notice(), notice.recipient(), c));
      case NoteDelivered c -> Decision.accepted(arrived(notice.notice(), notice.recipient(), c));
      // Who holds the link has the mail, even when the answer of the server was lost: that is as
      // good as sent, and stops further tries.
      case Acknowledge c -> Decision.accepted(read(notice.notice(), notice.recipient(), c));
      case Cancel c ->
          Decision.accepted(
              new NoticeCancelled(notice.notice(), notice.recipient(), c.why(), c.at()));
      case Escalate c ->
          c.step().reachesPeople()
              ? Decision.accepted(escalated(notice.notice(), notice.recipient(), c))
              : Decision.refused("on-its-way", "This notice is still on its way.");
      case Reach c -> Decision.accepted(reached(notice.notice(), notice.recipient(), c));
    };
  }

  private static Decision whenSent(Sent notice, NoticeCommand command) {
    return switch (command) {
      case Raise c -> Decision.accepted();
      case NoteSent c -> Decision.accepted();
      case GiveUp c -> alreadySent();
      // It was taken and did not arrive.
      case Exhaust c -> Decision.accepted(exhausted(notice.notice(), notice.recipient(), c));
      case NoteDelivered c -> Decision.accepted();
      case Acknowledge c -> Decision.accepted(read(notice.notice(), notice.recipient(), c));
      case Cancel c -> alreadySent();
      case Escalate c -> Decision.accepted(escalated(notice.notice(), notice.recipient(), c));
      case Reach c -> Decision.accepted(reached(notice.notice(), notice.recipient(), c));
    };
  }

  private static Decision whenUndeliverable(Undeliverable notice, NoticeCommand command) {
    return switch (command) {
      case Raise c -> Decision.accepted();
      case NoteSent c -> Decision.refused("given-up", "This notice was given up before.");
      case GiveUp c -> Decision.accepted();
      case Exhaust c -> Decision.accepted();
      case NoteDelivered c -> Decision.accepted(arrived(notice.notice(), notice.recipient(), c));
      case Acknowledge c -> Decision.accepted(read(notice.notice(), notice.recipient(), c));
      case Cancel c -> Decision.refused("given-up", "This notice was given up before.");
      case Escalate c ->
          c.step().reachesPeople()
              ? Decision.accepted(escalated(notice.notice(), notice.recipient(), c))
              : Decision.refused("given-up", "This notice was given up before.");
      case Reach c -> Decision.accepted(reached(notice.notice(), notice.recipient(), c));
    };
  }

  private static Decision whenAcknowledged(NoticeCommand command) {
    return switch (command) {
      case Raise c -> Decision.accepted();
      case NoteSent c -> Decision.accepted();
      case GiveUp c -> alreadySent();
      case Exhaust c -> Decision.accepted();
      case NoteDelivered c -> Decision.accepted();
      case Acknowledge c -> Decision.accepted();
      case Cancel c -> alreadySent();
      case Escalate c -> Decision.accepted();
      case Reach c -> Decision.accepted();
    };
  }

  private static Decision whenCancelled(NoticeCommand command) {
    return switch (command) {
      case Raise c -> Decision.accepted();
      case NoteSent c -> cancelled();
      case GiveUp c -> cancelled();
      case Exhaust c -> cancelled();
      case NoteDelivered c -> cancelled();
      case Acknowledge c -> cancelled();
      case Cancel c -> Decision.accepted();
      case Escalate c -> cancelled();
      case Reach c -> cancelled();
    };
  }

  private static NoticeEvent exhausted(UUID notice, String recipient, Exhaust c) {
    return c.next()
        .<NoticeEvent>map(
            next -> new NoticeMovedOn(notice, recipient, c.channel(), next, c.why().code(), c.at()))
        .orElseGet(
            () -> new NoticeUndeliverable(notice, recipient, c.channel(), c.why().code(), c.at()));
  }

  private static NoticeSent arrived(UUID notice, String recipient, NoteDelivered c) {
    return new NoticeSent(notice, recipient, c.channel(), c.attempt(), c.at());
  }

  private static NoticeUndeliverable given(UUID notice, String recipient, GiveUp c) {
    return new NoticeUndeliverable(notice, recipient, c.channel(), c.why().code(), c.at());
  }

  private static NoticeAcknowledged read(UUID notice, String recipient, Acknowledge c) {
    return new NoticeAcknowledged(notice, recipient, c.at());
  }

  private static NoticeEscalated escalated(UUID notice, String recipient, Escalate c) {
    return new NoticeEscalated(notice, recipient, c.step().code(), c.to().orElse(null), c.at());
  }

  private static PersonReached reached(UUID notice, String recipient, Reach c) {
    return new PersonReached(notice, recipient, c.way().code(), c.by(), c.at());
  }

  private static Decision noSuchNotice() {
    return Decision.refused("no-such-notice", "There is no such notice.");
  }

  private static Decision alreadySent() {
    return Decision.refused("already-sent", "This notice is out; it cannot be taken back.");
  }

  private static Decision cancelled() {
    return Decision.refused("cancelled", "This notice was cancelled and means nothing any more.");
  }
}
