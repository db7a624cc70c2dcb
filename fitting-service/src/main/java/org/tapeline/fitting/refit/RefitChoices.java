package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.BookingDesk;
import org.tapeline.fitting.fitday.FitDays;
import org.tapeline.fitting.fitday.OpenSlot;
import org.tapeline.fitting.fitday.ReachableSlot;
import org.tapeline.fitting.fitday.SlotRef;
import org.tapeline.journal.Cause;
import org.tapeline.journal.quarkus.http.Problem;

/** A guardian chooses another slot; always in the caller's transaction. */
@ApplicationScoped
public class RefitChoices {
  private final RefitCases cases;
  private final FitDays fitDays;
  private final BookingDesk desk;
  private final Clock clock;

  RefitChoices(RefitCases cases, FitDays fitDays, BookingDesk desk, Clock clock) {
    this.cases = cases;
    this.fitDays = fitDays;
    this.desk = desk;
    this.clock = clock;
  }

  /** Empty when the case is over, or was never opened. */
  public Optional<RefitChoice> of(UUID refitCase) {
    return RefitCaseRow.<RefitCaseRow>findByIdOptional(refitCase)
        .filter(RefitCaseRow::open)
        .map(this::choice);
  }

  private RefitChoice choice(RefitCaseRow row) {
    Instant now = clock.instant();
    SlotSeekers seekers = SlotSeekers.of(List.of(row), now);
    Optional<Instant> from = RefitRules.bookFrom(seekers.arrivals(row), Optional.empty(), now);
    return new RefitChoice(
        row.refitCase,
        row.player,
        row.field,
        seekers.seeker(row, from.orElse(now)).withoutHelmet(),
        from,
        fitDays.bookingOf(row.refitCase),
        cases.revisionOf(row.refitCase, row.player),
        from.map(earliest -> desk.reachable(row.field, earliest)).orElse(List.of()));
  }

  /**
   * Gives the case that slot in place of the one that it has. Nobody else takes or frees slots
   * meanwhile, and nothing else happens to the case: what is free now stays so until it is taken.
   *
   * @param had the slot that the guardian was shown as the present one
   * @param notice by whose link it is chosen
   * @throws Problem {@code over} when the case is closed, {@code changed-meanwhile} when it has
   *     another slot than the guardian knew of, {@code slot-taken} when the wanted one is not free
   */
  public Booking take(
      UUID refitCase, Optional<SlotRef> had, SlotRef wanted, UUID notice, Cause cause) {
    fitDays.lockSlots();
    RefitCaseRow row =
        RefitCaseRow.lockedOpen(List.of(refitCase)).stream()
            .findFirst()
            .orElseThrow(() -> Problem.conflict("over", "This re-fit is over."));
    RefitChoice choice = choice(row);
    if (!choice.booking().map(SlotRef::of).equals(had)) {
      throw Problem.conflict("changed-meanwhile", "The date has changed meanwhile. Choose again.");
    }
    OpenSlot free =
        choice.free().stream()
            .map(ReachableSlot::slot)
            .filter(slot -> SlotRef.of(slot).equals(wanted))
            .findFirst()
            .orElseThrow(() -> Problem.conflict("slot-taken", "It was just taken. Choose again."));
    Booking booking = fitDays.seat(refitCase, free);
    cases.handle(
        refitCase, row.player, book(row, booking, notice, clock.instant()), cause, "choose-slot");
    return booking;
  }

  private static RefitCommand.Book book(
      RefitCaseRow row, Booking booking, UUID notice, Instant now) {
    return new RefitCommand.Book(
        row.refitCase,
        row.player,
        booking.field(),
        booking.fitDay(),
        booking.startsAt(),
        booking.endsAt(),
        booking.zone(),
        SlotSeekers.of(List.of(row), now).stillComing(row),
        Optional.of(notice),
        now);
  }
}
