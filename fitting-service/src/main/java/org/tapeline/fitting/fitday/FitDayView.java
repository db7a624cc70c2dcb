package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

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

  /** A booked slot. */
  public record Slot(UUID refitCase, String from, String to) {}

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
    return DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH)
        .format(startsAt.atZone(ZoneId.of(zone)));
  }

  public String hours() {
    ZoneId at = ZoneId.of(zone);
    return time(startsAt, at) + " to " + time(endsAt, at);
  }

  private static String time(Instant at, ZoneId zone) {
    return DateTimeFormatter.ofPattern("HH:mm").format(at.atZone(zone));
  }
}
