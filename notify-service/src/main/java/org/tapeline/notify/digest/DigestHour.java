package org.tapeline.notify.digest;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/**
 * When a day's digest is due: from an hour on, on the clock of the place, until the day is over. An
 * hour that the clock passes over in spring is the one after it; one that comes twice in autumn is
 * the first.
 */
public final class DigestHour {
  private DigestHour() {}

  /** The day whose digest is due; empty before the hour. */
  public static Optional<LocalDate> due(Instant now, ZoneId zone, LocalTime hour) {
    LocalDate day = now.atZone(zone).toLocalDate();
    Instant from = day.atTime(hour).atZone(zone).toInstant();
    return now.isBefore(from) ? Optional.empty() : Optional.of(day);
  }
}
