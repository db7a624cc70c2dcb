package org.tapeline.notify.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.cause.RefitCase.CalledOff;
import org.tapeline.notify.cause.RefitCase.Closing;
import org.tapeline.notify.cause.RefitCase.Opening;
import org.tapeline.notify.notice.NoticeKind;
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
 */
public final class WhenRefitCaseMovesThenTellGuardian {
  private WhenRefitCaseMovesThenTellGuardian() {}

  /**
   * @param waitIsOver whether a notice may no longer be held back for the date
   */
  public static List<Step> react(RefitCase refitCase, ToldSoFar told, boolean waitIsOver) {
    if (refitCase.closing().isPresent()) {
      return whenClosed(refitCase, refitCase.closing().get(), told);
    }
    if (refitCase.opening().isEmpty()) {
      return List.of();
    }
    Opening opening = refitCase.opening().get();
    if (!told.any()) {
      return refitCase.booking().isPresent() || waitIsOver
          ? List.of(first(refitCase, opening))
          : List.of();
    }
    if (refitCase.calledOff().isPresent()) {
      return told.slot().isEmpty()
          ? List.of()
          : List.of(calledOff(opening, refitCase.calledOff().get()));
    }
    return refitCase.booking().map(booking -> next(refitCase, opening, booking, told)).stream()
        .flatMap(List::stream)
        .toList();
  }

  private static Step first(RefitCase refitCase, Opening opening) {
    boolean stop = opening.urgency() == Urgency.DO_NOT_WEAR;
    List<UUID> causes = new ArrayList<>(List.of(opening.event()));
    refitCase.booking().map(Booking::event).ifPresent(causes::add);
    return new Step.Tell(
        stop ? NoticeKind.DO_NOT_WEAR_REFIT : NoticeKind.REFIT_SOON,
        refitCase.id(),
        opening.urgency(),
        (stop ? "do-not-wear" : "refit-soon")
            + (refitCase.booking().isPresent() ? "-dated" : "-undated"),
        causes,
        refitCase.booking());
  }

  private static List<Step> next(
      RefitCase refitCase, Opening opening, Booking booking, ToldSoFar told) {
    if (told.slot().isEmpty()) {
      // The first date is told once a case; one after a date that did not hold, once a booking.
      UUID about = told.unbooked() ? booking.event() : refitCase.id();
      return List.of(dated(NoticeKind.REFIT_DATE, about, "refit-date", opening, booking));
    }
    return told.slot().get().equals(booking.slot())
        ? List.of()
        : List.of(
            dated(NoticeKind.REFIT_CHANGED, booking.event(), "refit-changed", opening, booking));
  }

  private static Step calledOff(Opening opening, CalledOff off) {
    return new Step.Tell(
        NoticeKind.REFIT_UNBOOKED,
        off.event(),
        opening.urgency(),
        "refit-unbooked",
        List.of(off.event()),
        Optional.empty());
  }

  private static Step dated(
      NoticeKind kind, UUID about, String template, Opening opening, Booking booking) {
    return new Step.Tell(
        kind, about, opening.urgency(), template, List.of(booking.event()), Optional.of(booking));
  }

  private static List<Step> whenClosed(RefitCase refitCase, Closing closing, ToldSoFar told) {
    if (!told.any()) {
      return List.of();
    }
    List<Step> steps = new ArrayList<>(List.of(new Step.CancelUnsent()));
    if (closing.fitted() && told.anyTried() && !told.fittedAgain()) {
      steps.add(
          new Step.Tell(
              NoticeKind.FITTED_AGAIN,
              refitCase.id(),
              Urgency.NORMAL,
              "fitted-again",
              List.of(closing.event()),
              Optional.empty()));
    }
    return List.copyOf(steps);
  }
}
