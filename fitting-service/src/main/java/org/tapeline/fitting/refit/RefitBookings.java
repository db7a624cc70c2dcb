package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.BookingDesk;
import org.tapeline.fitting.fitday.FitDays;
import org.tapeline.fitting.fitday.MovedDay.Displaced;
import org.tapeline.fitting.fitday.OpenSlot;
import org.tapeline.fitting.fitday.SlotSeeker;
import org.tapeline.fitting.fitday.TakenPlace;
import org.tapeline.journal.Cause;

/**
 * Books re-fit cases, always all that wait at once, so that the most urgent one chooses first and
 * siblings come together whatever it was that made a booking possible. Each case hears one word.
 */
@ApplicationScoped
class RefitBookings {
  private final RefitCases cases;
  private final FitDays fitDays;
  private final BookingDesk desk;
  private final Clock clock;

  RefitBookings(RefitCases cases, FitDays fitDays, BookingDesk desk, Clock clock) {
    this.cases = cases;
    this.fitDays = fitDays;
    this.desk = desk;
    this.clock = clock;
  }

  /**
   * Gives a slot to every case that waits for one and can have one; a slot that suits is kept.
   *
   * @param causeOf why the case is booked
   */
  void bookWaiting(Function<UUID, Cause> causeOf) {
    fitDays.lockSlots();
    Instant now = clock.instant();
    if (!fitDays.anyOpen(now)) {
      return; // a hold on many helmets says so many times that there is something to book
    }
    List<RefitCaseRow> rows = RefitCaseRow.waiting(now);
    SlotSeekers seekers = SlotSeekers.of(rows, now);
    List<SlotSeeker> ready = new ArrayList<>();
    for (RefitCaseRow row : rows) {
      earliest(seekers, row, now).ifPresent(from -> ready.add(seekers.seeker(row, from)));
    }
    Map<UUID, OpenSlot> plan = desk.plan(ready, seekers.siblings());
    for (RefitCaseRow row : rows) {
      if (plan.containsKey(row.refitCase)) {
        Booking booking = fitDays.seat(row.refitCase, plan.get(row.refitCase));
        say(row, booking, seekers.stillComing(row), now, causeOf.apply(row.refitCase));
      }
    }
  }

  private Optional<Instant> earliest(SlotSeekers seekers, RefitCaseRow row, Instant now) {
    return RefitRules.bookFrom(
        seekers.arrivals(row),
        fitDays
            .bookingOf(row.refitCase)
            .map(slot -> new RefitRules.Slot(slot.startsAt(), slot.endsAt())),
        now);
  }

  /**
   * Books those anew who lost their slots: on their places of a day that was moved, else wherever
   * it suits; who finds nothing is unbooked. Who keeps the very slot hears nothing.
   */
  void bookAgain(UUID fitDay, List<TakenPlace> displaced, String why, Cause cause) {
    Instant now = clock.instant();
    List<RefitCaseRow> rows =
        RefitCaseRow.lockedOpen(displaced.stream().map(TakenPlace::refitCase).toList());
    SlotSeekers seekers = SlotSeekers.of(rows, now);
    List<Displaced> all = new ArrayList<>();
    for (TakenPlace place : displaced) {
      rows.stream()
          .filter(row -> row.refitCase.equals(place.refitCase()))
          .forEach(row -> all.add(displaced(seekers, row, place, now)));
    }
    Map<UUID, OpenSlot> kept = desk.kept(fitDay, all);
    for (RefitCaseRow row : rows) {
      if (kept.containsKey(row.refitCase)) {
        Booking booking = fitDays.seat(row.refitCase, kept.get(row.refitCase));
        say(row, booking, seekers.stillComing(row), now, cause);
      }
    }
    bookWaiting(refitCase -> cause);
    for (RefitCaseRow row : rows) {
      if (fitDays.bookingOf(row.refitCase).isEmpty()) {
        RefitCommand.Unbook unbook =
            new RefitCommand.Unbook(row.refitCase, row.player, fitDay, why, now);
        cases.handle(row.refitCase, row.player, unbook, cause, "unbook-refit");
      }
    }
  }

  private static Displaced displaced(
      SlotSeekers seekers, RefitCaseRow row, TakenPlace place, Instant now) {
    Optional<Instant> from = RefitRules.bookFrom(seekers.arrivals(row), Optional.empty(), now);
    return new Displaced(seekers.seeker(row, from.orElse(now)), from.isPresent(), place);
  }

  private void say(RefitCaseRow row, Booking booking, boolean waits, Instant now, Cause cause) {
    RefitCommand.Book book =
        new RefitCommand.Book(
            row.refitCase,
            row.player,
            booking.field(),
            booking.fitDay(),
            booking.startsAt(),
            booking.endsAt(),
            booking.zone(),
            waits,
            Optional.empty(),
            now);
    cases.handle(row.refitCase, row.player, book, cause, "book-refit");
  }
}
