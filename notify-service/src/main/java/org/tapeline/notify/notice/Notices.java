package org.tapeline.notify.notice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.Transactions;

/**
 * Raises notices and records what becomes of them: the stream in the journal and the row that
 * follows from it change in the caller's transaction.
 */
@ApplicationScoped
public class Notices {
  private final Journal journal;
  private final Transactions transactions;
  private final NoticeTexts texts;
  private final DueBell bell;
  private final Ways ways;
  private final Clock clock;

  Notices(
      Journal journal,
      Transactions transactions,
      NoticeTexts texts,
      DueBell bell,
      Ways ways,
      Clock clock) {
    this.journal = journal;
    this.transactions = transactions;
    this.texts = texts;
    this.bell = bell;
    this.ways = ways;
    this.clock = clock;
  }

  /** The same kind about the same thing to the same person is the same notice. */
  public static UUID idOf(NoticeKind kind, UUID about, String recipient) {
    return DerivedId.from(about, "notice/" + kind.code() + "/" + recipient);
  }

  /**
   * The id of the next notice about something: where one was taken back to be told anew, the new
   * one is another.
   */
  public static UUID nextId(NoticeKind kind, UUID about, String recipient) {
    long before =
        NoticeRow.count(
            "about = ?1 and kind = ?2 and recipient = ?3", about, kind.code(), recipient);
    return before == 0
        ? idOf(kind, about, recipient)
        : DerivedId.from(about, "notice/" + kind.code() + "/" + recipient + "/" + before);
  }

  public boolean raisedBefore(NoticeKind kind, UUID about, String recipient) {
    return NoticeCoverRow.count(
            "about = ?1 and kind = ?2 and recipient = ?3", about, kind.code(), recipient)
        > 0;
  }

  /** Raises a notice, unless it was raised before: the database's unique key decides. */
  public void raise(NewNotice notice, Cause cause) {
    Instant now = clock.instant();
    if (!NoticeInsert.insert(notice, cause, now)) {
      return;
    }
    texts.keep(notice);
    NoticeRow row = NoticeRow.findById(notice.id());
    decide(row, List.of(), new NoticeCommand.Raise(notice.raised(now)), cause);
    switch (ways.first(notice.recipient(), notice.kind(), notice.urgency())) {
      case Way.By by -> {
        row.channel = by.channel();
        row.channelSince = now;
        transactions.afterCommit(bell::ring);
      }
      case Way.TurnedOff off ->
          decide(notice.id(), new NoticeCommand.Cancel("opted-out", now), cause.step("turned-off"));
      case Way.None none ->
          decide(
              notice.id(),
              new NoticeCommand.GiveUp("mail", WhyUndeliverable.NO_ADDRESS, now),
              cause.step("unreachable"));
    }
  }

  /**
   * What waits for a person and was not tried yet is due at once: something that held it changed.
   */
  public void tryNow(String recipient) {
    NoticeRow.update(
        "nextTryAt = ?1 where recipient = ?2 and state = 'raised' and attempts = 0",
        clock.instant(),
        recipient);
    transactions.afterCommit(bell::ring);
  }

  /** Decides a command from the journal and records what follows. */
  public Decision decide(UUID notice, NoticeCommand command, Cause cause) {
    NoticeRow row = NoticeRow.locked(notice);
    if (row == null) {
      return NoticeDecider.decide(Notice.none(), command);
    }
    return decide(row, journal.load(stream(row)), command, cause);
  }

  private static StreamName stream(NoticeRow row) {
    return StreamName.of("notice", row.notice, row.recipient);
  }

  /**
   * @param row locked, or inserted in this transaction
   * @param history all of its stream
   */
  private Decision decide(
      NoticeRow row, List<RecordedEvent> history, NoticeCommand command, Cause cause) {
    Notice state = Notice.none();
    for (RecordedEvent event : history) {
      state = NoticeDecider.evolve(state, (NoticeEvent) event.data());
    }
    Decision decision = NoticeDecider.decide(state, command);
    if (decision instanceof Decision.Accepted accepted && !accepted.events().isEmpty()) {
      List<Record> events = accepted.events().stream().map(Record.class::cast).toList();
      for (RecordedEvent event : journal.append(stream(row), history.size(), events, cause)) {
        state = NoticeDecider.evolve(state, (NoticeEvent) event.data());
        NoticeProjection.apply(row, state, event);
      }
      if (state instanceof Notice.Raised && !history.isEmpty()) {
        transactions.afterCommit(bell::ring);
      }
    }
    return decision;
  }
}
