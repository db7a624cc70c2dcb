package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayCancelled;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayMoved;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/** Fit days and their slots; always in the caller's transaction. */
@ApplicationScoped
public class FitDays {
  private final Journal journal;

  FitDays(Journal journal) {
    this.journal = journal;
  }

  /** Until the transaction ends nobody else makes, frees or looks for slots. */
  public void lockSlots() {
    FitSlotRow.lockSlots();
  }

  /** Whether anybody could be booked at all. */
  public boolean anyOpen(Instant from) {
    return FitSlotRow.count("refitCase is null and startsAt >= ?1", from) > 0;
  }

  /** Decides, records, and makes or removes the slots. */
  FitDayDecision handle(UUID fitDay, FitDayCommand command, Cause cause) {
    FitSlotRow.lockSlots();
    StreamName stream = StreamName.of("fitday", fitDay, fitDay);
    List<RecordedEvent> history = journal.load(stream);
    FitDay state = FitDay.NONE;
    for (RecordedEvent event : history) {
      state = FitDayDecider.evolve(state, (FitDayEvent) event.data());
    }
    FitDayDecision decision = FitDayDecider.decide(state, command);
    if (decision instanceof FitDayDecision.Accepted accepted) {
      journal.append(stream, history.size(), List.of((Record) accepted.event()), cause);
      show(accepted.event());
    }
    return decision;
  }

  private static void show(FitDayEvent event) {
    switch (event) {
      case FitDayAnnounced day -> {
        FitDayRow.show(day);
        makeSlots(day.fitDay(), day.opening());
      }
      case FitDayMoved day -> {
        FitSlotRow.removeAll(day.fitDay());
        FitDayRow.show(day);
        makeSlots(day.fitDay(), day.opening());
      }
      case FitDayCancelled day -> {
        FitSlotRow.bookedOn(day.fitDay()).forEach(FitSlotRow::free);
        FitDayRow.show(day);
      }
    }
  }

  private static void makeSlots(UUID fitDay, Opening opening) {
    FitDaySlots.of(opening).forEach(slot -> FitSlotRow.make(fitDay, slot));
  }

  /** Who has which place of the day, in the order of the row. */
  List<TakenPlace> takenOn(FitDayRow day) {
    return FitSlotRow.bookedOn(day.fitDay).stream()
        .map(
            slot ->
                new TakenPlace(
                    slot.refitCase,
                    day.opening().stepOf(slot.startsAt),
                    slot.lane,
                    new OpenSlot(day.fitDay, day.field, slot.startsAt, slot.endsAt, slot.lane)))
        .toList();
  }

  public Optional<Booking> bookingOf(UUID refitCase) {
    return FitSlotRow.of(refitCase).map(FitDays::booking);
  }

  /** Gives a slot back. */
  public void free(UUID refitCase) {
    FitSlotRow.of(refitCase).ifPresent(FitSlotRow::free);
  }

  /** Gives the case that slot, in place of the one that it had. */
  public Booking seat(UUID refitCase, OpenSlot slot) {
    free(refitCase);
    FitSlotRow row =
        FitSlotRow.findById(
            new FitSlotRow.Key(slot.fitDay(), slot.startsAt(), slot.lane()),
            LockModeType.PESSIMISTIC_WRITE);
    row.take(refitCase);
    return booking(row);
  }

  private static Booking booking(FitSlotRow slot) {
    FitDayRow day = FitDayRow.findById(slot.fitDay);
    return new Booking(slot.fitDay, day.field, slot.startsAt, slot.endsAt, day.zone);
  }
}
