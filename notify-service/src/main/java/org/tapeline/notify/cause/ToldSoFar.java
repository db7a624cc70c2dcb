package org.tapeline.notify.cause;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeOfCase;

/**
 * What one person was told of one case so far; what was cancelled does not count.
 *
 * @param any whether the case was told, and not only its date
 * @param anyTried whether one was sent, or a try to send it was made
 * @param fittedAgain whether the end was told
 * @param unbooked whether a date was ever called off
 * @param slot the newest slot that was told and not called off since
 */
public record ToldSoFar(
    boolean any,
    boolean anyTried,
    boolean fittedAgain,
    boolean unbooked,
    Optional<RefitCase.Slot> slot) {

  private static final Set<NoticeKind> OF_THE_CASE =
      EnumSet.of(NoticeKind.DO_NOT_WEAR_REFIT, NoticeKind.REFIT_SOON);

  public static ToldSoFar nothing() {
    return new ToldSoFar(false, false, false, false, Optional.empty());
  }

  /**
   * @param notices those of one person and case, in the order in which they were raised
   */
  public static ToldSoFar of(List<NoticeOfCase> notices) {
    List<NoticeOfCase> valid = notices.stream().filter(n -> !n.cancelled()).toList();
    return new ToldSoFar(
        valid.stream().anyMatch(n -> OF_THE_CASE.contains(n.kind())),
        valid.stream().anyMatch(NoticeOfCase::tried),
        valid.stream().anyMatch(n -> n.kind() == NoticeKind.FITTED_AGAIN),
        valid.stream().anyMatch(n -> n.kind() == NoticeKind.REFIT_UNBOOKED),
        valid.stream()
            .filter(n -> n.slotStartsAt().isPresent() || n.kind() == NoticeKind.REFIT_UNBOOKED)
            .reduce((earlier, later) -> later)
            .filter(n -> n.slotStartsAt().isPresent())
            .map(
                n ->
                    new RefitCase.Slot(
                        n.slotStartsAt().orElseThrow(), n.slotField().orElseThrow())));
  }
}
