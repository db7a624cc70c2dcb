package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
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

  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

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

  /** Those that are not over, earliest first; not those that were cancelled. */
  public static List<FitDayView> coming(Instant now) {
    return FitDayRow.coming(now).stream().map(FitDayView::of).toList();
  }

  /** ISO date of the field. */
  public String date() {
    return startsAt.atZone(ZoneId.of(zone)).toLocalDate().toString();
  }

  /** ISO time of the field, hours and minutes. */
  public String opens() {
    return HOUR.format(startsAt.atZone(ZoneId.of(zone)));
  }

  public String closes() {
    return HOUR.format(endsAt.atZone(ZoneId.of(zone)));
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
