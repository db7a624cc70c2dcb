package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * Which notice means nothing any more when it could not be sent in time: the table of causes says
 * which later news end it, and whether its own date does.
 */
public final class Overtaking {
  private Overtaking() {}

  /**
   * @param one the notice that waits
   * @param raisedAt when it was raised
   * @param later kinds of what the same person was told, or is to be told, of the same case since
   */
  public static boolean overtaken(
      NoticeOfCase one, Instant raisedAt, List<NoticeKind> later, Instant now, CauseTable table) {
    Set<NoticeKind> ends = table.overtakes(one.kind());
    return later.stream().anyMatch(ends::contains)
        || table.endsWithItsDate(one.kind())
            && one.slotStartsAt()
                .filter(slot -> slot.isAfter(raisedAt) && slot.isBefore(now))
                .isPresent();
  }
}
