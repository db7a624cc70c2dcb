package org.tapeline.notify.channel;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTryRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.notice.WhyUndeliverable;

/** Goes on to the next channel when one is exhausted; always in the caller's transaction. */
@ApplicationScoped
public class Fallback {
  private final Notices notices;
  private final Reach reach;
  private final Clock clock;

  Fallback(Notices notices, Reach reach, Clock clock) {
    this.notices = notices;
    this.reach = reach;
    this.clock = clock;
  }

  /**
   * A channel cannot reach the person: the next one is tried, or, without one, the notice is given
   * up. Nothing happens for a notice that went on to another channel before.
   */
  public void exhausted(UUID notice, String channel, WhyUndeliverable why, Cause cause) {
    NoticeRow row = NoticeRow.locked(notice);
    if (row != null && channel.equals(row.channel)) {
      Optional<String> next = why == WhyUndeliverable.ERASED ? Optional.empty() : next(row);
      notices.decide(notice, new NoticeCommand.Exhaust(channel, why, next, clock.instant()), cause);
    }
  }

  /** The channel after the notice's own; empty when there is none. */
  Optional<String> next(NoticeRow row) {
    Set<String> used = new HashSet<>(NoticeTryRow.channelsOf(row.notice));
    used.add(row.channel);
    return reach.next(row.recipient, Urgency.of(row.urgency), used);
  }
}
