package org.tapeline.fitting.fitday;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.fitting.place.Place;
import org.tapeline.journal.quarkus.http.MeantDay;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/**
 * What somebody wants of a fit day.
 *
 * @param date ISO date, {@code opens} and {@code closes} ISO times, in the field's zone
 * @param fitters {@code null} for what is usual
 * @param minutesPerFit {@code null} for what is usual
 */
public record FitDayBody(
    String field,
    String date,
    String opens,
    String closes,
    Integer fitters,
    Integer minutesPerFit) {

  /**
   * @throws Problem when it is no field that is known here
   */
  Place place() {
    Place place = field == null ? null : Place.findById(field);
    if (place == null || !place.kind.equals("field")) {
      throw wrong(List.of(new FieldError("field", "Choose a field from the list.")));
    }
    return place;
  }

  /**
   * @throws Problem when the date or an hour cannot be read
   */
  Opening opening(Place place, int usualFitters, int usualMinutes) {
    ZoneId zone = ZoneId.of(place.zone);
    List<FieldError> errors = new ArrayList<>();
    Instant from = moment("opens", opens, zone, errors);
    Instant to = moment("closes", closes, zone, errors);
    if (!errors.isEmpty()) {
      throw wrong(errors);
    }
    return new Opening(
        place.code,
        from,
        to,
        place.zone,
        fitters == null ? usualFitters : fitters,
        minutesPerFit == null ? usualMinutes : minutesPerFit);
  }

  private Instant moment(String entry, String time, ZoneId zone, List<FieldError> errors) {
    try {
      LocalDate day = MeantDay.parse(text(date));
      try {
        return ZonedDateTime.of(day, LocalTime.parse(text(time)), zone).toInstant();
      } catch (DateTimeException e) {
        errors.add(new FieldError(entry, "Write the time as 17:30."));
      }
    } catch (DateTimeException e) {
      errors.removeIf(error -> error.field().equals("date"));
      errors.add(new FieldError("date", "Write the date as 2026-08-31."));
    }
    return Instant.EPOCH;
  }

  static Problem wrong(List<FieldError> errors) {
    return new Problem(
        422, "fit-day", "Not as it is written", "Correct the entries that are marked.", errors);
  }

  private static String text(String value) {
    return value == null ? "" : value.strip();
  }
}
