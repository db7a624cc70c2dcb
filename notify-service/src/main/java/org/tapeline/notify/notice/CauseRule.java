package org.tapeline.notify.notice;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.notify.notice.CauseName.Recipient;

/**
 * One line of the table of causes.
 *
 * @param when what happened, in words, with the names of the events
 * @param to who is told; empty for nobody
 * @param urgency empty for that of the re-fit case
 * @param window how long causes may wait to be told together; none is longer than a day
 * @param household whether what concerns several children of one guardian becomes one notice
 * @param overtakenBy kinds of later news after which it is not sent any more
 * @param overtakenByItsDate whether the date that it tells ends it too
 */
public record CauseRule(
    CauseName cause,
    String when,
    NoticeKind kind,
    Set<Recipient> to,
    Optional<Urgency> urgency,
    Duration window,
    boolean household,
    List<NoticeKind> overtakenBy,
    boolean overtakenByItsDate) {

  /** The longest that a helmet which must not be worn may go untold. */
  public static final Duration AT_ONCE = Duration.ofSeconds(3);

  private static final Duration A_DAY = Duration.ofDays(1);

  public CauseRule {
    to = Set.copyOf(to);
    overtakenBy = List.copyOf(overtakenBy);
    refuse(when.isBlank(), cause, "says when it happens");
    refuse(kind != cause.kind(), cause, "has words of the kind " + cause.kind().code());
    refuse(!Set.of(cause.words()).containsAll(to), cause, "has words for " + cause.words().code());
    refuse(urgency.isEmpty() != cause.isOfACase(), cause, "has another urgency");
    refuse(window.isNegative() || window.compareTo(A_DAY) > 0, cause, "waits a day at most");
    refuse(household && !cause.isForHouseholds(), cause, "has no words for households");
    if (cause.isSafety()) {
      refuse(urgency.get() != Urgency.DO_NOT_WEAR, cause, "is about a helmet not to be worn");
      refuse(window.compareTo(AT_ONCE) > 0, cause, "is told within " + AT_ONCE.toSeconds() + " s");
      refuse(!to.contains(Recipient.GUARDIANS), cause, "is told to the guardians");
      refuse(overtakenByItsDate, cause, "is not ended by a date");
      refuse(!mayEndSafety().containsAll(overtakenBy), cause, "is ended by " + mayEndSafety());
    }
  }

  /** Only what says as much, or that the helmet was fitted, ends a "do not wear". */
  private static Set<NoticeKind> mayEndSafety() {
    return Set.of(NoticeKind.DO_NOT_WEAR_REFIT, NoticeKind.FITTED_AGAIN);
  }

  /** Its own urgency, or that of the case. */
  public Urgency urgencyIn(Urgency ofTheCase) {
    return urgency.orElse(ofTheCase);
  }

  private static void refuse(boolean wrong, CauseName cause, String rule) {
    if (wrong) {
      throw new IllegalArgumentException("causes.json: " + cause.code() + " " + rule);
    }
  }
}
