package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.roster.Words;

/** A fit day for pages and programs. */
public record FitDayView(
    UUID fitDay,
    String field,
    Instant startsAt,
    Instant endsAt,
    String zone,
    int fitters,
    int minutesPerFit,
    long free,
    List<Slot> booked) {

  /** A booked slot; the times are of the field's clock, 00:00 to 23:59. */
  public record Slot(UUID refitCase, LocalTime from, LocalTime to) {
    public String fromSaid() {
      return Words.time(from);
    }
  }

  static FitDayView of(FitDayRow row) {
    ZoneId zone = ZoneId.of(row.zone);
    List<Slot> booked =
        FitSlotRow.bookedOn(row.fitDay).stream()
            .map(s -> new Slot(s.refitCase, time(s.startsAt, zone), time(s.endsAt, zone)))
            .toList();
    return new FitDayView(
        row.fitDay,
        row.field,
        row.startsAt,
        row.endsAt,
        row.zone,
        row.fitters,
        row.minutes,
        FitSlotRow.freeOn(row.fitDay),
        booked);
  }

  public String day() {
    return Words.day(startsAt, ZoneId.of(zone));
  }

  public String hours() {
    ZoneId at = ZoneId.of(zone);
    return Words.time(startsAt, at) + " to " + Words.time(endsAt, at);
  }

  private static LocalTime time(Instant at, ZoneId zone) {
    return at.atZone(zone).toLocalTime();
  }
}
