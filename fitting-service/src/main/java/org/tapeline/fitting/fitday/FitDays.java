package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
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
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/** Fit days and their slots; always in the caller's transaction. */
@ApplicationScoped
public class FitDays {
  private final Journal journal;

  FitDays(Journal journal) {
    this.journal = journal;
  }

  /** Decides, records, and makes or frees the slots. */
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
        FitDayRow.announced(day);
        FitDaySlots.of(day).forEach(slot -> FitSlotRow.make(day.fitDay(), slot));
      }
      case FitDayCancelled day -> {
        FitSlotRow.bookedOn(day.fitDay()).forEach(FitSlotRow::free);
        FitDayRow.cancelled(day.fitDay());
      }
    }
  }

  public Optional<Booking> bookingOf(UUID refitCase) {
    return FitSlotRow.of(refitCase).map(FitDays::booking);
  }

  /** Gives a slot back. */
  public void free(UUID refitCase) {
    FitSlotRow.of(refitCase).ifPresent(FitSlotRow::free);
  }

  /**
   * Takes the first free slot at or after that moment: at the field, else at the nearest one that
   * has any. The slot that the case had before is given back; where there is no free one it keeps
   * it.
   */
  public Optional<Booking> rebook(UUID refitCase, String field, Instant earliest) {
    FitSlotRow.lockSlots();
    List<String> places = new ArrayList<>(List.of(field));
    places.addAll(Travel.nearest(field));
    for (String place : places) {
      Optional<FitSlotRow> slot = FitSlotRow.takeFirstFree(place, earliest);
      if (slot.isPresent()) {
        free(refitCase);
        slot.get().take(refitCase);
        return slot.map(FitDays::booking);
      }
    }
    return Optional.empty();
  }

  private static Booking booking(FitSlotRow slot) {
    FitDayRow day = FitDayRow.findById(slot.fitDay);
    return new Booking(slot.fitDay, day.field, slot.startsAt, slot.endsAt, day.zone);
  }
}
