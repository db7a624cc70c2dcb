package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.UUID;

/** What is wanted of a fit day. */
public sealed interface FitDayCommand {

  /** Fitters will be at a field. */
  record Announce(UUID fitDay, Opening opening, Instant at) implements FitDayCommand {}

  /** It is held at another time, at another field or with other fitters. */
  record Move(UUID fitDay, Opening opening, Instant at) implements FitDayCommand {}

  /** It does not take place. */
  record Cancel(UUID fitDay, Instant at) implements FitDayCommand {}
}
