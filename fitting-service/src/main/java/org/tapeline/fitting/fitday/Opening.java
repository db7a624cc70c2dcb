package org.tapeline.fitting.fitday;

import java.time.Duration;
import java.time.Instant;

/**
 * Where, when and with how many a fit day is held.
 *
 * @param field code of the field
 * @param zone time zone of the field (IANA)
 * @param fitters how many work side by side
 * @param minutesPerFit length of a slot
 */
public record Opening(
    String field, Instant startsAt, Instant endsAt, String zone, int fitters, int minutesPerFit) {

  /** How many slots after the first one, from 0. */
  int stepOf(Instant slot) {
    return Math.toIntExact(Duration.between(startsAt, slot).toMinutes() / minutesPerFit);
  }
}
