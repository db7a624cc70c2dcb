package org.tapeline.notify.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.cause.RefitCase.CalledOff;
import org.tapeline.notify.cause.RefitCase.Closing;
import org.tapeline.notify.cause.RefitCase.Opening;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseRule;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.Urgency;

/**
 * Which notices a guardian gets of a re-fit case:
 *
 * <ul>
 *   <li>one with the date at once when the booking is known; without it when the wait is over;
 *   <li>after one without a date, a short one with it;
 *   <li>after another date or field, one that says so;
 *   <li>after a date that does not hold without another, one that says so, and with the next date a
 *       short one again;
 *   <li>after a pass, "fitted again" - but only to whom something was sent;
 *   <li>nothing of a case that was closed first.
 * </ul>
 *
 * What was raised and not tried to be sent counts as not told: it is taken back when it is not
 * among the steps any more. Kind and urgency stand in the table of causes.
 */
public final class WhenRefitCaseMovesThenTellGuardian {
  private WhenRefitCaseMovesThenTellGuardian() {}

  /**
   * @param told what was sent, or tried to be
   * @param waitIsOver whether a notice may no longer be held back for the date
   */
  public static List<Step> react(
      CauseTable table, RefitCase refitCase, ToldSoFar told, boolean waitIsOver) {
    if (refitCase.closing().isPresent()) {
      return whenClosed(table, refitCase, refitCase.closing().get(), told);
    }
    if (refitCase.opening().isEmpty()) {
      return List.of();
    }
    Opening opening = refitCase.opening().get();
    if (!told.any()) {
      return refitCase.booking().isPresent() || waitIsOver
          ? List.of(first(table, refitCase, opening))
          : List.of();
    }
    if (refitCase.calledOff().isPresent()) {
      return told.slot().isEmpty()
          ? List.of()
          : List.of(calledOff(table, opening, refitCase.calledOff().get()));
    }
    return refitCase
        .booking()
        .map(booking -> next(table, refitCase, opening, booking, told))
        .stream()
        .flatMap(List::stream)
        .toList();
  }

  /** What opens with this urgency. */
  public static CauseName opened(Urgency urgency) {
    return urgency == Urgency.DO_NOT_WEAR ? CauseName.REFIT_DO_NOT_WEAR : CauseName.REFIT_SOON;
  }

  private static Step first(CauseTable table, RefitCase refitCase, Opening opening) {
    CauseName cause = opened(opening.urgency());
    List<UUID> causes = new ArrayList<>(List.of(opening.event()));
    refitCase.booking().map(Booking::event).ifPresent(causes::add);
    return tell(
        table,
        cause,
        refitCase.id(),
        opening.urgency(),
        (cause == CauseName.REFIT_DO_NOT_WEAR ? "do-not-wear" : "refit-soon")
            + (refitCase.booking().isPresent() ? "-dated" : "-undated"),
        causes,
        refitCase.booking());
  }

  private static List<Step> next(
      CauseTable table, RefitCase refitCase, Opening opening, Booking booking, ToldSoFar told) {
    if (told.slot().isEmpty()) {
      // The first date is told once a case; one after a date that did not hold, once a booking.
      UUID about = told.unbooked() ? booking.event() : refitCase.id();
      return List.of(
          dated(table, CauseName.REFIT_FIRST_DATE, about, "refit-date", opening, booking));
    }
    return told.slot().get().equals(booking.slot())
        ? List.of()
        : List.of(
            dated(
                table,
                CauseName.REFIT_OTHER_DATE,
                booking.event(),
                "refit-changed",
                opening,
                booking));
  }

  private static Step calledOff(CauseTable table, Opening opening, CalledOff off) {
    return tell(
        table,
        CauseName.REFIT_DATE_OFF,
        off.event(),
        opening.urgency(),
        "refit-unbooked",
        List.of(off.event()),
        Optional.empty());
  }

  private static Step dated(
      CauseTable table,
      CauseName cause,
      UUID about,
      String template,
      Opening opening,
      Booking booking) {
    return tell(
        table,
        cause,
        about,
        opening.urgency(),
        template,
        List.of(booking.event()),
        Optional.of(booking));
  }

  private static Step tell(
      CauseTable table,
      CauseName cause,
      UUID about,
      Urgency ofTheCase,
      String template,
      List<UUID> causes,
      Optional<Booking> slot) {
    CauseRule rule = table.of(cause);
    return new Step.Tell(
        cause,
        rule.kind(),
        about,
        rule.urgencyIn(ofTheCase),
        template,
        causes,
        slot,
        Optional.empty());
  }

  private static List<Step> whenClosed(
      CauseTable table, RefitCase refitCase, Closing closing, ToldSoFar told) {
    List<Step> steps = new ArrayList<>(List.of(new Step.CancelUnsent()));
    if (closing.fitted() && told.anyTried() && !told.fittedAgain()) {
      steps.add(
          tell(
              table,
              CauseName.REFIT_PASSED,
              refitCase.id(),
              Urgency.NORMAL,
              "fitted-again",
              List.of(closing.event()),
              Optional.empty()));
    }
    return List.copyOf(steps);
  }
}
