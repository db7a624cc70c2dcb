package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.cause.Fit.Due;
import org.tapeline.notify.cause.Fit.State;
import org.tapeline.notify.cause.Fit.Told;
import org.tapeline.notify.cause.Fit.Word;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseRule;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;

/**
 * Which notices a guardian gets of a sign-off and its re-checks:
 *
 * <ul>
 *   <li>one reminder for all that is due of a sign-off, and another only for an earlier last day;
 *   <li>"do not wear" when the sign-off lapsed; none of a withdrawn one, whose re-fit case tells
 *       it;
 *   <li>"fitted again" after a lapse that was told, unless a re-fit case came between, which says
 *       so itself;
 *   <li>nothing while a re-fit case is open.
 * </ul>
 */
public final class WhenFitIsDueThenTellGuardian {
  private static final Comparator<Due> PRESSING =
      Comparator.comparing((Due due) -> due.lapsesAt().orElse(Instant.MAX))
          .thenComparing(Due::at)
          .thenComparing(Due::event);

  private WhenFitIsDueThenTellGuardian() {}

  /**
   * @param told what was sent, or tried to be, in that order
   */
  public static List<Step.Tell> react(CauseTable table, Fit fit, List<Told> told, Instant now) {
    if (fit.caseOpen() || fit.is(State.WITHDRAWN)) {
      return List.of();
    }
    if (fit.is(State.LAPSED)) {
      return lapsed(table, fit.word().orElseThrow(), told);
    }
    Optional<Step.Tell> again = fit.word().flatMap(word -> fittedAgain(table, fit, word, told));
    return again.isPresent()
        ? List.of(again.get())
        : reminder(table, outstanding(fit), told, now).stream().toList();
  }

  /** A re-check from before the sign-off is over. */
  static List<Due> outstanding(Fit fit) {
    return fit.dues().stream()
        .filter(due -> fit.word().filter(word -> due.at().isBefore(word.at())).isEmpty())
        .sorted(PRESSING)
        .toList();
  }

  private static List<Step.Tell> lapsed(CauseTable table, Word word, List<Told> told) {
    boolean before =
        told.stream()
            .anyMatch(
                t -> t.kind() == NoticeKind.SIGN_OFF_LAPSED && t.about().equals(word.event()));
    return before
        ? List.of()
        : List.of(
            tell(
                table,
                CauseName.SIGN_OFF_LAPSED,
                word.event(),
                "sign-off-lapsed",
                List.of(word.event()),
                Optional.of(word.at())));
  }

  private static Optional<Step.Tell> fittedAgain(
      CauseTable table, Fit fit, Word word, List<Told> told) {
    return told.stream()
        .filter(t -> t.kind() == NoticeKind.SIGN_OFF_LAPSED && t.tried())
        .reduce((earlier, later) -> later)
        .filter(lapse -> lapse.by().filter(at -> at.isBefore(word.at())).isPresent())
        .filter(
            lapse ->
                fit.caseOpenedAt().filter(at -> at.isAfter(lapse.by().orElseThrow())).isEmpty())
        .filter(
            lapse ->
                told.stream()
                    .noneMatch(
                        t ->
                            t.kind() == NoticeKind.FITTED_AGAIN && t.about().equals(lapse.about())))
        .map(
            lapse ->
                tell(
                    table,
                    CauseName.SIGNED_OFF_AGAIN,
                    lapse.about(),
                    "fitted-again",
                    List.of(word.event()),
                    Optional.empty()));
  }

  private static Optional<Step.Tell> reminder(
      CauseTable table, List<Due> outstanding, List<Told> told, Instant now) {
    List<Due> open =
        outstanding.stream()
            .filter(d -> d.lapsesAt().filter(at -> !at.isAfter(now)).isEmpty())
            .toList();
    List<UUID> events = outstanding.stream().map(Due::event).toList();
    List<Told> before =
        told.stream()
            .filter(t -> t.kind() == NoticeKind.RECHECK_DUE && events.contains(t.about()))
            .toList();
    Instant earliest =
        before.stream()
            .map(t -> t.by().orElse(Instant.MAX))
            .min(Comparator.naturalOrder())
            .orElse(null);
    List<UUID> fresh =
        open.stream()
            .map(Due::event)
            .filter(event -> before.stream().noneMatch(t -> t.about().equals(event)))
            .toList();
    Optional<Instant> last = open.stream().findFirst().flatMap(Due::lapsesAt);
    boolean nothingNew = earliest != null && last.filter(at -> at.isBefore(earliest)).isEmpty();
    return fresh.isEmpty() || nothingNew
        ? Optional.empty()
        : Optional.of(
            tell(table, CauseName.RECHECK_DUE, fresh.getFirst(), "recheck-due", fresh, last));
  }

  private static Step.Tell tell(
      CauseTable table,
      CauseName cause,
      UUID about,
      String template,
      List<UUID> causes,
      Optional<Instant> by) {
    CauseRule rule = table.of(cause);
    return new Step.Tell(
        cause,
        rule.kind(),
        about,
        rule.urgencyIn(Urgency.NORMAL),
        template,
        causes,
        Optional.empty(),
        by);
  }
}
