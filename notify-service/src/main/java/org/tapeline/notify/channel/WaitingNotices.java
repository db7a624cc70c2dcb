package org.tapeline.notify.channel;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.tapeline.journal.Cause;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.notice.WhyUndeliverable;

/** Notices that wait for a channel which fails as a whole, or is not set up any more. */
@ApplicationScoped
class WaitingNotices {
  private static final int AT_ONCE = 100;

  private final Fallback fallback;
  private final ChannelPolicy policy;
  private final Clock clock;

  WaitingNotices(Fallback fallback, ChannelPolicy policy, Clock clock) {
    this.fallback = fallback;
    this.policy = policy;
    this.clock = clock;
  }

  /**
   * Lets those go on that waited as long as their urgency allows and have another channel; the
   * others stay, and are looked at again after the same time.
   */
  @Transactional
  void moveOn(Channel channel) {
    Instant now = clock.instant();
    for (Urgency urgency : Urgency.values()) {
      Instant before = now.minus(policy.of(urgency).moveOnAfter());
      for (NoticeRow row : waiting(channel, urgency, before)) {
        if (fallback.next(row).isPresent()) {
          leave(row, channel, WhyUndeliverable.TRIES_USED_UP);
        } else {
          row.lookedAt = now;
        }
      }
    }
  }

  /**
   * Takes notices off a channel that is not set up.
   *
   * @return whether there were any
   */
  @Transactional
  boolean takeOff(Channel channel) {
    List<NoticeRow> rows =
        NoticeRow.<NoticeRow>find("state = 'raised' and channel = ?1", channel.code())
            .withLock(LockModeType.PESSIMISTIC_WRITE)
            .page(0, AT_ONCE)
            .list();
    rows.forEach(row -> leave(row, channel, WhyUndeliverable.NO_ADDRESS));
    return !rows.isEmpty();
  }

  private void leave(NoticeRow row, Channel channel, WhyUndeliverable why) {
    Cause cause = new Cause(row.raisedEvent, row.correlationId, "leave-" + channel.code());
    fallback.exhausted(row.notice, channel.code(), why, cause);
  }

  private static List<NoticeRow> waiting(Channel channel, Urgency urgency, Instant before) {
    return NoticeRow.<NoticeRow>find(
            """
            state = 'raised' and channel = ?1 and urgency = ?2 and channelSince <= ?3
            and (lookedAt is null or lookedAt <= ?3) order by channelSince
            """,
            channel.code(),
            urgency.code(),
            before)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .page(0, AT_ONCE)
        .list();
  }
}
