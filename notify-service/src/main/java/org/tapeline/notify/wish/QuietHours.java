package org.tapeline.notify.wish;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;

/**
 * Hours of each day in which somebody is not to be written to, by the clock on the wall: what is
 * due then goes out when they end. When the clock is put forward over their end, they end as it
 * jumps; when it is put back, the hour that comes twice counts both times.
 *
 * @param from they begin; whole minutes
 * @param to they end, on the next day when it is not after {@code from}; another time than {@code
 *     from}
 */
public record QuietHours(LocalTime from, LocalTime to, ZoneId zone) {
  private static final int MOST_DAYS = 3;

  public QuietHours {
    if (from.equals(to)) {
      throw new IllegalArgumentException("Quiet hours end at another time than they begin");
    }
  }

  /** Whether it is quiet now. */
  public boolean at(Instant now) {
    LocalTime clock = now.atZone(zone).toLocalTime();
    return from.isBefore(to)
        ? !clock.isBefore(from) && clock.isBefore(to)
        : !clock.isBefore(from) || clock.isBefore(to);
  }

  /** When they end, after now; empty when it is not quiet. */
  public Optional<Instant> endAfter(Instant now) {
    if (!at(now)) {
      return Optional.empty();
    }
    LocalDate today = now.atZone(zone).toLocalDate();
    for (int day = 0; day <= MOST_DAYS; day++) {
      Optional<Instant> end = endOn(today.plusDays(day), now);
      if (end.isPresent()) {
        return end;
      }
    }
    throw new IllegalStateException("Quiet hours without an end: " + this);
  }

  private Optional<Instant> endOn(LocalDate day, Instant now) {
    LocalDateTime end = day.atTime(to);
    ZoneOffsetTransition jump = zone.getRules().getTransition(end);
    if (jump != null && jump.isGap()) {
      return after(jump.getInstant(), now);
    }
    for (ZoneOffset offset : zone.getRules().getValidOffsets(end)) {
      Optional<Instant> at = after(end.toInstant(offset), now);
      if (at.isPresent()) {
        return at;
      }
    }
    return Optional.empty();
  }

  /** An end may lie in the hour that comes twice, and be quiet again at once: then it is none. */
  private Optional<Instant> after(Instant end, Instant now) {
    return end.isAfter(now) && !at(end) ? Optional.of(end) : Optional.empty();
  }
}
