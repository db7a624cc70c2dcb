package org.tapeline.notify.notice;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Which notice means nothing any more when it could not be sent in time. That a helmet must not be
 * worn is overtaken by a passed fit check alone; news of a date by any later news of the date, and
 * by the date itself when it went by in the meantime.
 */
public final class Overtaking {
  private static final Set<NoticeKind> OF_DATES =
      EnumSet.of(NoticeKind.REFIT_DATE, NoticeKind.REFIT_CHANGED, NoticeKind.REFIT_UNBOOKED);

  private Overtaking() {}

  /**
   * @param one the notice that waits
   * @param raisedAt when it was raised
   * @param later kinds of what the same person was told, or is to be told, of the same case since
   */
  public static boolean overtaken(
      NoticeOfCase one, Instant raisedAt, List<NoticeKind> later, Instant now) {
    if (later.contains(NoticeKind.FITTED_AGAIN)) {
      return true;
    }
    return OF_DATES.contains(one.kind())
        && (later.stream().anyMatch(OF_DATES::contains)
            || one.slotStartsAt()
                .filter(slot -> slot.isAfter(raisedAt) && slot.isBefore(now))
                .isPresent());
  }
}
