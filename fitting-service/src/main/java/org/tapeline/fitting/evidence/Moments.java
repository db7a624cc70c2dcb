package org.tapeline.fitting.evidence;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.tapeline.fitting.place.Place;

/** Moments as they are written on paper: in the time of the field, the zone said with them. */
record Moments(ZoneId zone) {
  private static final DateTimeFormatter WHOLE =
      DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy, h:mm a z", Locale.US);
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
  private static final DateTimeFormatter DAY_AND_HOUR =
      DateTimeFormatter.ofPattern("MMM d, h:mm a", Locale.US);

  /** Where the field is not known, in UTC. */
  static Moments at(String field) {
    return new Moments(Place.zoneOf(field));
  }

  /** {@code Thursday, November 26, 2026, 5:30 PM CST}. */
  String whole(Instant at) {
    return WHOLE.format(at.atZone(named()));
  }

  /** The hour; with the day when it is not that of the other moment. */
  String hour(Instant at, Instant other) {
    boolean sameDay = at.atZone(zone).toLocalDate().equals(other.atZone(zone).toLocalDate());
    return (sameDay ? HOUR : DAY_AND_HOUR).format(at.atZone(zone));
  }

  String zoneSaid() {
    return named().getId();
  }

  /** An offset of nothing has the letter Z for its name, which says little on paper. */
  private ZoneId named() {
    return zone.equals(ZoneOffset.UTC) ? ZoneId.of("UTC") : zone;
  }
}
