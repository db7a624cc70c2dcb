package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.place.Place;

/**
 * A fit day as a calendar shows it.
 *
 * @param place name of the field
 * @param sequence rises whenever the day is moved or cancelled
 * @param booked number of slots that somebody has
 * @param lines what else is to be read there
 */
public record CalendarDay(
    UUID fitDay,
    String field,
    String place,
    Instant startsAt,
    Instant endsAt,
    int sequence,
    boolean cancelled,
    long booked,
    long free,
    List<String> lines) {

  static CalendarDay of(FitDayRow row, List<String> lines) {
    Place place = Place.findById(row.field);
    return new CalendarDay(
        row.fitDay,
        row.field,
        place == null ? row.field : place.name,
        row.startsAt,
        row.endsAt,
        row.sequence,
        row.cancelled,
        FitSlotRow.bookedOn(row.fitDay).size(),
        FitSlotRow.freeOn(row.fitDay),
        lines);
  }
}
