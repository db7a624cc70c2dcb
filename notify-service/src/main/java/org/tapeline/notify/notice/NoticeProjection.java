package org.tapeline.notify.notice;

import java.time.Duration;
import java.time.Instant;
import org.tapeline.journal.RecordedEvent;

/** What an event changes in a notice's row. */
final class NoticeProjection {
  /**
   * No step of an escalation comes sooner after a notice was raised or sent: until then nobody
   * looks at it, and the senders have the rows for themselves.
   */
  static final Duration FIRST_LOOK = Duration.ofMinutes(1);

  private NoticeProjection() {}

  /**
   * @param state where the notice stands after the event
   */
  static void apply(NoticeRow row, Notice state, RecordedEvent recorded) {
    row.version = recorded.version();
    row.changedAt = recorded.time();
    row.state = state.code();
    switch ((NoticeEvent) recorded.data()) {
      case NoticeRaised e -> {
        row.raisedEvent = recorded.id();
        lookBy(row, e.at().plus(FIRST_LOOK));
      }
      case NoticeSent e -> sent(row, e);
      case NoticeMovedOn e -> goesBy(row, e.to(), e.at());
      case NoticeUndeliverable e -> {
        over(row, e.why());
        forPeople(row, e.at());
        lookBy(row, e.at());
      }
      case NoticeAcknowledged e -> answered(row, row.why);
      case NoticeCancelled e -> answered(row, e.why());
      case NoticeEscalated e -> {
        if (e.to() == null) {
          forPeople(row, e.at());
        } else {
          goesBy(row, e.to(), e.at());
        }
      }
      case PersonReached e -> answered(row, e.way());
    }
  }

  private static void sent(NoticeRow row, NoticeSent e) {
    over(row, null);
    row.channel = e.channel();
    if (row.sentAt == null) {
      row.sentAt = e.at();
      lookBy(row, e.at().plus(FIRST_LOOK));
    }
  }

  private static void goesBy(NoticeRow row, String channel, Instant at) {
    row.channel = channel;
    row.channelSince = at;
    row.channelAttempts = 0;
    row.lookedAt = null;
    row.nextTryAt = at;
  }

  private static void over(NoticeRow row, String why) {
    row.nextTryAt = null;
    row.why = why;
  }

  private static void answered(NoticeRow row, String why) {
    over(row, why);
    row.escalateAt = null;
  }

  private static void forPeople(NoticeRow row, Instant at) {
    if (row.peopleAt == null && row.toGuardian()) {
      row.peopleAt = at;
    }
  }

  private static void lookBy(NoticeRow row, Instant at) {
    if (row.toGuardian() && (row.escalateAt == null || at.isBefore(row.escalateAt))) {
      row.escalateAt = at;
    }
  }
}
