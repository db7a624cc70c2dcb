package org.tapeline.fitting.fitday;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The slots of a fit day: back to back for each fitter, none that would run past the end. */
final class FitDaySlots {
  private FitDaySlots() {}

  /**
   * A slot of one fitter.
   *
   * @param lane which of the fitters, from 1
   */
  record Slot(Instant startsAt, Instant endsAt, int lane) {}

  static List<Slot> of(Opening day) {
    Duration length = Duration.ofMinutes(day.minutesPerFit());
    List<Slot> slots = new ArrayList<>();
    Instant start = day.startsAt();
    while (!start.plus(length).isAfter(day.endsAt())) {
      for (int lane = 1; lane <= day.fitters(); lane++) {
        slots.add(new Slot(start, start.plus(length), lane));
      }
      start = start.plus(length);
    }
    return slots;
  }
}
