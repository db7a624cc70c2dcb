package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.fitday.FitDaySlots.Slot;

@DisplayName("The slots of a fit day")
class FitDaySlotsTest {
  private static final Instant STARTS = Instant.parse("2026-08-04T22:30:00Z");

  private static List<Slot> slots(int openMinutes, int fitters, int minutesPerFit) {
    return FitDaySlots.of(
        new Opening(
            "NORTH", STARTS, minute(openMinutes), "America/Chicago", fitters, minutesPerFit));
  }

  private static Instant minute(int minutes) {
    return STARTS.plusSeconds(60L * minutes);
  }

  @Test
  @DisplayName("lie back to back, for each fitter, and end with the day")
  void backToBack() {
    assertThat(slots(30, 2, 15))
        .containsExactly(
            new Slot(minute(0), minute(15), 1),
            new Slot(minute(0), minute(15), 2),
            new Slot(minute(15), minute(30), 1),
            new Slot(minute(15), minute(30), 2));
  }

  @Test
  @DisplayName("do not run past the end")
  void notPastTheEnd() {
    assertThat(slots(29, 1, 15)).containsExactly(new Slot(minute(0), minute(15), 1));
  }
}
