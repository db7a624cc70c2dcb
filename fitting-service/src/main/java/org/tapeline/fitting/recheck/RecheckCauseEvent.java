package org.tapeline.fitting.recheck;

import java.time.Instant;
import java.util.UUID;

/** What makes a re-check due and is told to this service itself. */
public sealed interface RecheckCauseEvent {

  /**
   * So warm was it at a field.
   *
   * @param airCelsius degrees Celsius
   * @param at when it was so warm
   */
  record ConditionsRecorded(String field, double airCelsius, Instant at, String by)
      implements RecheckCauseEvent {}

  /**
   * A player's hair is other than it was.
   *
   * @param hair usual, short, long or braids
   */
  record HairChanged(UUID player, String hair, Instant at, String by)
      implements RecheckCauseEvent {}
}
