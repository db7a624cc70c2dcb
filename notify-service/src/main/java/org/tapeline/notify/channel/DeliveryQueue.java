package org.tapeline.notify.channel;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.Cause;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeCovers;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTextRow;
import org.tapeline.notify.notice.NoticeTexts;
import org.tapeline.notify.notice.NoticeTryRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.Urgency;

/**
 * The due notices as a queue for senders in any number of threads and processes.
 *
 * <p>A claim writes down that a try starts, and when it counts as cut off, and commits before the
 * channel's server is spoken to. When a process dies between the server's answer and our noting it,
 * nobody knows whether it took the message. Then the try stays without an outcome, the notice
 * becomes due again once the try counts as cut off, and the same message goes out again under the
 * same key: mail programs and calendars recognise the repeat by Message-ID and UID, a text gateway
 * by the idempotency key. A safety notice twice is better than none.
 */
@ApplicationScoped
class DeliveryQueue {
  private static final int MOST_NEEDLESS = 100;

  private final Notices notices;
  private final NoticeCovers covers;
  private final NoticeTexts texts;
  private final Reach reach;
  private final NoticeLinks links;
  private final Clock clock;

  DeliveryQueue(
      Notices notices,
      NoticeCovers covers,
      NoticeTexts texts,
      Reach reach,
      NoticeLinks links,
      Clock clock) {
    this.notices = notices;
    this.covers = covers;
    this.texts = texts;
    this.reach = reach;
    this.links = links;
    this.clock = clock;
  }

  /**
   * Takes the most urgent notice that is due on a channel; empty when none is. One that was
   * overtaken, or turned off, while it waited is cancelled on the way; one that is due in the
   * person's quiet hours waits for their end.
   */
  @Transactional
  Optional<Claim> claim(Channel channel) {
    Instant now = clock.instant();
    for (int i = 0; i < MOST_NEEDLESS; i++) {
      Optional<NoticeRow> due = due(channel, now);
      if (due.isEmpty()) {
        return Optional.empty();
      }
      NoticeRow row = due.get();
      Optional<String> needless = needless(row, now);
      Optional<Instant> quiet =
          needless.isPresent()
              ? Optional.empty()
              : reach.quietUntil(row.recipient, Urgency.of(row.urgency), now);
      if (needless.isPresent()) {
        notices.decide(
            row.notice,
            new NoticeCommand.Cancel(needless.get(), now),
            new Cause(row.raisedEvent, row.correlationId, "needless"));
      } else if (quiet.isPresent()) {
        hold(row, quiet.get());
      } else {
        return Optional.of(start(row, channel, now));
      }
    }
    return Optional.empty();
  }

  private static Optional<NoticeRow> due(Channel channel, Instant now) {
    List<?> due =
        NoticeRow.getEntityManager()
            .createNativeQuery(
                """
                select * from notice
                where state = 'raised' and channel = ?1 and next_try_at <= ?2
                order by case urgency when 'do-not-wear' then 0 when 'soon' then 1 else 2 end,
                  next_try_at
                limit 1 for update skip locked
                """,
                NoticeRow.class)
            .setParameter(1, channel.code())
            .setParameter(2, now)
            .getResultList();
    return due.stream().findFirst().map(NoticeRow.class::cast);
  }

  private Optional<String> needless(NoticeRow row, Instant now) {
    if (reach.turnedOff(row.recipient, NoticeKind.of(row.kind))) {
      return Optional.of("opted-out");
    }
    return covers.overtaken(row, now) ? Optional.of("overtaken") : Optional.empty();
  }

  /** The channel's patience begins when it may be tried. */
  private static void hold(NoticeRow row, Instant until) {
    row.nextTryAt = until;
    row.channelSince = until;
  }

  private Claim start(NoticeRow row, Channel channel, Instant now) {
    row.attempts++;
    row.channelAttempts++;
    row.nextTryAt = now.plus(channel.limits().cutOffAfter());
    NoticeTryRow started = new NoticeTryRow();
    started.notice = row.notice;
    started.attempt = row.attempts;
    started.channel = channel.code();
    started.startedAt = now;
    started.persist();
    Cause cause = new Cause(row.raisedEvent, row.correlationId, "try-" + row.attempts);
    Optional<NoticeTextRow> text = texts.of(row.notice);
    Optional<Outgoing> message =
        text.flatMap(t -> channel.addressOf(row.recipient).map(to -> message(row, t, to, channel)));
    return new Claim(row.notice, channel.code(), row.attempts, cause, message, text.isEmpty());
  }

  private Outgoing message(NoticeRow row, NoticeTextRow text, String to, Channel channel) {
    return new Outgoing(
        row.notice,
        channel.begin(row.notice),
        to,
        texts.letterOf(row.notice).orElseThrow(),
        text.subject,
        text.plain,
        text.html,
        Optional.ofNullable(text.calendar),
        Optional.ofNullable(row.refitCase),
        links.turnOff(NoticeKind.of(row.kind).mayBeTurnedOff(), row.recipient, row.notice));
  }
}
