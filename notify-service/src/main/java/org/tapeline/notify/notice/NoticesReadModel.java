package org.tapeline.notify.notice;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.UUID;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.rebuild.Folds;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/**
 * Where each notice stands, as its stream tells. What a notice covers and how its tries go is not
 * in the events: a notice that is not there is not made again, so that nobody is told twice.
 */
@Singleton
class NoticesReadModel {
  @Produces
  @Singleton
  ReadModel notices(Journal journal) {
    Folds<Notice> folds =
        new Folds<>(
            journal, id -> Notice.none(), (notice, e) -> NoticeDecider.evolve(notice, of(e)));
    return ReadModel.of(
            "notices",
            ReadTable.of("notice")
                .keeping(
                    "about",
                    "slot_starts_at",
                    "slot_field",
                    "attempts",
                    "channel",
                    "channel_since",
                    "channel_attempts",
                    "looked_at",
                    "escalate_at")
                .keepingWhenSet("next_try_at")
                .withoutOldRows())
        .fromJournal(NoticeEvent.class, event -> show(event, folds.after(event)));
  }

  private static NoticeEvent of(RecordedEvent event) {
    return (NoticeEvent) event.data();
  }

  private static UUID noticeOf(RecordedEvent event) {
    return UUID.fromString(event.stream().substring("notice-".length()));
  }

  private static void show(RecordedEvent event, Notice state) {
    NoticeRow row =
        event.data() instanceof NoticeRaised raised
            ? NoticeRow.of(raised, event)
            : NoticeRow.findById(noticeOf(event));
    NoticeProjection.apply(row, state, event);
    row.persistAndFlush();
  }
}
