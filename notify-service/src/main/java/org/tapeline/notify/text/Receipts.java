package org.tapeline.notify.text;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.notify.channel.Fallback;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.WhyUndeliverable;

/**
 * What receipts lead to, in whatever order and however often they come: delivered is the last word;
 * a failed message lets the notice go on to the next channel.
 */
@ApplicationScoped
class Receipts {
  private static final UUID NOBODY = new UUID(0, 0);

  private final Notices notices;
  private final Fallback fallback;
  private final TextSettings settings;
  private final Clock clock;

  Receipts(Notices notices, Fallback fallback, TextSettings settings, Clock clock) {
    this.notices = notices;
    this.fallback = fallback;
    this.settings = settings;
    this.clock = clock;
  }

  /** What became of a receipt. */
  enum Taken {
    DONE,
    /** The very same one came before. */
    SEEN,
    /** No such message, or none yet. */
    UNKNOWN
  }

  /** The signature is remembered together with the effect, or neither. */
  @Transactional
  Taken take(Receipt receipt, String signature) {
    Instant now = clock.instant();
    Optional<UUID> id = notice(receipt);
    if (id.isEmpty()) {
      return Taken.UNKNOWN;
    }
    if (!firstTime(signature, now)) {
      return Taken.SEEN;
    }
    // The notice first, as a try's end does it, so that the two never wait for each other.
    NoticeRow notice = NoticeRow.locked(id.get());
    message(receipt).ifPresent(row -> apply(row, receipt.status(), notice, now));
    return Taken.DONE;
  }

  private void apply(TextMessageRow row, String status, NoticeRow notice, Instant now) {
    Cause cause =
        new Cause(
            DerivedId.from(row.notice, "text-receipt/" + row.group),
            notice.correlationId,
            "receipt-" + (settings.receipts().delivered().contains(status) ? "ok" : "failed"));
    if (row.state.equals("delivered")) {
      return;
    }
    if (settings.receipts().delivered().contains(status)) {
      change(row, "delivered", now);
      int attempt = Math.max(1, notice.attempts);
      notices.decide(
          row.notice, new NoticeCommand.NoteDelivered(TextChannel.CODE, attempt, now), cause);
    } else if (settings.receipts().failed().contains(status) && !row.state.equals("failed")) {
      change(row, "failed", now);
      fallback.exhausted(row.notice, TextChannel.CODE, WhyUndeliverable.NOT_DELIVERED, cause);
    }
  }

  private static void change(TextMessageRow row, String state, Instant now) {
    row.state = state;
    row.changedAt = now;
  }

  /** Only the id, so that what is read later under the lock is fresh. */
  private static Optional<UUID> notice(Receipt receipt) {
    List<?> notices =
        TextMessageRow.getEntityManager()
            .createNativeQuery(
                """
                select notice from text_message
                where gateway_id = :id or notice = :notice and message_group = :group
                """,
                UUID.class)
            .setParameter("id", receipt.id().orElse(""))
            .setParameter("notice", receipt.key().map(MessageKey::notice).orElse(NOBODY))
            .setParameter("group", receipt.key().map(MessageKey::group).orElse(0))
            .getResultList();
    return notices.stream().findFirst().map(UUID.class::cast);
  }

  private static Optional<TextMessageRow> message(Receipt receipt) {
    return receipt
        .key()
        .flatMap(key -> TextMessageRow.locked(key.notice(), key.group()))
        .or(() -> receipt.id().flatMap(TextMessageRow::lockedBy));
  }

  private boolean firstTime(String signature, Instant now) {
    var db = TextMessageRow.getEntityManager();
    db.createNativeQuery("delete from receipt_seen where until < ?1")
        .setParameter(1, now)
        .executeUpdate();
    return db.createNativeQuery(
                "insert into receipt_seen (signature, until) values (?1, ?2) on conflict do"
                    + " nothing")
            .setParameter(1, signature)
            .setParameter(2, now.plus(settings.receipts().window().multipliedBy(2)))
            .executeUpdate()
        == 1;
  }
}
