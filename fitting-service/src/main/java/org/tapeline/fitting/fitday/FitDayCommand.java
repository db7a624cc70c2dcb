package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.UUID;

/** What is wanted of a fit day. */
public sealed interface FitDayCommand {

  /**
   * Fitters will be at a field.
   *
   * @param fitters how many work side by side
   * @param minutesPerFit length of a slot
   */
  record Announce(
      UUID fitDay,
      String field,
      Instant startsAt,
      Instant endsAt,
      String zone,
      int fitters,
      int minutesPerFit,
      Instant at)
      implements FitDayCommand {}

  /** It does not take place. */
  record Cancel(UUID fitDay, Instant at) implements FitDayCommand {}
}
