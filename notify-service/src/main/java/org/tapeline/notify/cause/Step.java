package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;

/** What is to be done for one person. */
public sealed interface Step {

  /**
   * Raise a notice, unless one of this kind about this was raised before.
   *
   * @param about what it is about: together with kind and person it makes the notice unique
   * @param template the words to use
   * @param causes ids of the events that led to it, at least one
   * @param slot the slot it tells, if it tells one
   * @param by the day by which something is to be done
   */
  record Tell(
      CauseName cause,
      NoticeKind kind,
      UUID about,
      Urgency urgency,
      String template,
      List<UUID> causes,
      Optional<RefitCase.Booking> slot,
      Optional<Instant> by)
      implements Step {
    public Tell {
      causes = List.copyOf(causes);
    }
  }

  /** Cancel what was raised and not tried yet. */
  record CancelUnsent() implements Step {}
}
