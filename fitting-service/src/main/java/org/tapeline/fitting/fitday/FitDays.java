package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayCancelled;
import org.tapeline.fitting.place.Travel;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Fit days and their slots; always in the caller's transaction. */
@ApplicationScoped
public class FitDays {
  private final Journal journal;
  private final Clock clock;

  FitDays(Journal journal, Clock clock) {
    this.journal = journal;
    this.clock = clock;
  }

  /** Announces a fit day and makes its slots. */
  void announce(FitDayAnnounced day, Cause cause) {
    journal.append(stream(day.fitDay()), 0, List.of(day), cause);
    FitDayRow row = new FitDayRow();
    row.fitDay = day.fitDay();
    row.field = day.field();
    row.startsAt = day.startsAt();
    row.endsAt = day.endsAt();
    row.zone = day.zone();
    row.fitters = day.fitters();
    row.minutes = day.minutesPerFit();
    row.persistAndFlush();
    Duration length = Duration.ofMinutes(day.minutesPerFit());
    for (Instant start = day.startsAt();
        !start.plus(length).isAfter(day.endsAt());
        start = start.plus(length)) {
      for (int lane = 1; lane <= day.fitters(); lane++) {
        FitSlotRow slot = new FitSlotRow();
        slot.fitDay = day.fitDay();
        slot.startsAt = start;
        slot.endsAt = start.plus(length);
        slot.lane = lane;
        slot.persist();
      }
    }
  }

  /**
   * Cancels a fit day.
   *
   * @return the cases that had a slot on it
   */
  List<UUID> cancel(FitDayRow day, Cause cause) {
    List<UUID> cases = new ArrayList<>();
    for (FitSlotRow slot : FitSlotRow.bookedOn(day.fitDay)) {
      cases.add(slot.refitCase);
      slot.refitCase = null;
    }
    day.cancelled = true;
    day.persistAndFlush();
    journal.append(
        stream(day.fitDay), 1, List.of(new FitDayCancelled(day.fitDay, clock.instant())), cause);
    return cases;
  }

  public Optional<Booking> bookingOf(UUID refitCase) {
    return FitSlotRow.of(refitCase).map(FitDays::booking);
  }

  /** Gives a slot back, unless it is over. */
  public void free(UUID refitCase) {
    FitSlotRow.of(refitCase)
        .filter(slot -> slot.startsAt.isAfter(clock.instant()))
        .ifPresent(
            slot -> {
              slot.refitCase = null;
              slot.persistAndFlush();
            });
  }

  /**
   * Takes the first free slot at or after that moment: at the field, else at the nearest one that
   * has any. The slot that the case had before is given back.
   */
  public Optional<Booking> rebook(UUID refitCase, String field, Instant earliest) {
    List<String> places = new ArrayList<>(List.of(field));
    places.addAll(Travel.nearest(field));
    for (String place : places) {
      Optional<FitSlotRow> slot = FitSlotRow.takeFirstFree(place, earliest);
      if (slot.isPresent()) {
        FitSlotRow.of(refitCase).ifPresent(before -> before.refitCase = null);
        FitSlotRow.getEntityManager().flush();
        slot.get().refitCase = refitCase;
        slot.get().persistAndFlush();
        return slot.map(FitDays::booking);
      }
    }
    return Optional.empty();
  }

  private static Booking booking(FitSlotRow slot) {
    FitDayRow day = FitDayRow.findById(slot.fitDay);
    return new Booking(slot.fitDay, day.field, slot.startsAt, slot.endsAt, day.zone);
  }

  private static StreamName stream(UUID fitDay) {
    return StreamName.of("fitday", fitDay, fitDay);
  }
}
