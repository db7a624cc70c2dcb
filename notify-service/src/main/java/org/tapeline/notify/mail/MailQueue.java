package org.tapeline.notify.mail;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTexts;
import org.tapeline.notify.notice.NoticeTryRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.WhyUndeliverable;

/**
 * The due notices as a queue for senders in any number of threads and processes.
 *
 * <p>A claim writes down that a try starts, and when it counts as cut off, and commits before the
 * mail server is spoken to. SMTP has no way to ask "did you take it?": when a process dies between
 * the server's 250 and our noting it, nobody knows. Then the try stays without an outcome, the
 * notice becomes due again once the try counts as cut off, and the same message goes out again with
 * the same Message-ID and the same calendar UID, by which servers, mail programs and calendars
 * recognise the repeat. A safety notice twice is better than none; and the window is the few
 * milliseconds between two statements.
 */
@ApplicationScoped
class MailQueue {
  private static final String CHANNEL = "mail";

  private final Notices notices;
  private final NoticeTexts texts;
  private final Addresses addresses;
  private final BackOff backOff;
  private final Duration cutOffAfter;
  private final Clock clock;

  MailQueue(
      Notices notices, NoticeTexts texts, Addresses addresses, MailSettings settings, Clock clock) {
    this.notices = notices;
    this.texts = texts;
    this.addresses = addresses;
    this.backOff = new BackOff(settings.backOff(), settings.giveUpAfter());
    this.cutOffAfter = settings.cutOffAfter();
    this.clock = clock;
  }

  /**
   * A notice whose try has been noted.
   *
   * @param attempt which try this is, from 1
   */
  record Claim(
      UUID notice, int attempt, Instant raisedAt, Cause cause, Optional<OutgoingMail> mail) {}

  /** Takes the most urgent due notice; empty when none is due. */
  @Transactional
  Optional<Claim> claim() {
    Instant now = clock.instant();
    List<?> due =
        NoticeRow.getEntityManager()
            .createNativeQuery(
                """
                select notice from notice where state = 'raised' and next_try_at <= ?1
                order by case urgency when 'do-not-wear' then 0 when 'soon' then 1 else 2 end,
                  next_try_at
                limit 1 for update skip locked
                """,
                UUID.class)
            .setParameter(1, now)
            .getResultList();
    return due.stream().findFirst().map(id -> start(NoticeRow.findById(id), now));
  }

  private Claim start(NoticeRow row, Instant now) {
    row.attempts++;
    row.nextTryAt = now.plus(cutOffAfter);
    NoticeTryRow started = new NoticeTryRow();
    started.notice = row.notice;
    started.attempt = row.attempts;
    started.channel = CHANNEL;
    started.startedAt = now;
    started.persist();
    Cause cause = new Cause(row.raisedEvent, row.correlationId, "try-" + row.attempts);
    return new Claim(row.notice, row.attempts, row.raisedAt, cause, mail(row));
  }

  private Optional<OutgoingMail> mail(NoticeRow row) {
    Optional<String> to = addresses.of(row.recipient);
    return texts
        .of(row.notice)
        .filter(text -> to.isPresent())
        .map(
            text ->
                new OutgoingMail(
                    row.notice,
                    to.orElseThrow(),
                    row.language,
                    text.subject,
                    text.plain,
                    text.html,
                    Optional.ofNullable(text.calendar),
                    Optional.ofNullable(row.refitCase)));
  }

  /** Notes how the try ended and what follows from it. */
  @Transactional
  void note(Claim claim, SendOutcome outcome) {
    Instant now = clock.instant();
    switch (outcome) {
      case SendOutcome.Taken t -> {
        end(claim, "taken", null, now);
        notices.decide(
            claim.notice(),
            new NoticeCommand.NoteSent(CHANNEL, claim.attempt(), now),
            claim.cause());
      }
      case SendOutcome.AddressRefused r ->
          giveUp(claim, "refused", r.code(), WhyUndeliverable.ADDRESS_REFUSED, now);
      case SendOutcome.MessageRefused r ->
          giveUp(claim, "refused", r.code(), WhyUndeliverable.MESSAGE_REFUSED, now);
      case SendOutcome.Failed f -> failed(claim, f.code(), now);
    }
  }

  /** Notes that there is nobody, or nothing, to send to any more. */
  @Transactional
  void noteErased(Claim claim) {
    giveUp(claim, "failed", "erased", WhyUndeliverable.ERASED, clock.instant());
  }

  private void failed(Claim claim, String code, Instant now) {
    Optional<Instant> next = backOff.next(claim.attempt(), claim.raisedAt(), now);
    if (next.isEmpty()) {
      giveUp(claim, "failed", code, WhyUndeliverable.TRIES_USED_UP, now);
      return;
    }
    end(claim, "failed", code, now);
    NoticeRow row = NoticeRow.locked(claim.notice());
    if (row.nextTryAt != null) {
      row.nextTryAt = next.get();
    }
  }

  private void giveUp(Claim claim, String outcome, String code, WhyUndeliverable why, Instant now) {
    end(claim, outcome, code, now);
    notices.decide(claim.notice(), new NoticeCommand.GiveUp(CHANNEL, why, now), claim.cause());
  }

  private static void end(Claim claim, String outcome, String code, Instant now) {
    NoticeTryRow row = NoticeTryRow.findById(new NoticeTryRow.Key(claim.notice(), claim.attempt()));
    row.endedAt = now;
    row.outcome = outcome;
    row.code = code;
  }
}
