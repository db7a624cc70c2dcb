package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The calendar of fit days (RFC 5545)")
class FitDayCalendarTest {
  private static final UUID DAY = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d22");
  private static final Instant WRITTEN = Instant.parse("2026-08-01T15:06:07.891Z");
  private static final Instant STARTS = Instant.parse("2026-08-04T22:30:00Z");

  private static CalendarDay day(String place, boolean cancelled, String... lines) {
    return new CalendarDay(
        DAY, "NORTH", place, STARTS, STARTS.plusSeconds(9000), 2, cancelled, 3, 17, List.of(lines));
  }

  private static String file(CalendarDay... days) {
    return FitDayCalendar.write(List.of(days), WRITTEN);
  }

  @Test
  @DisplayName("carries the day's own UID, the stamp, how often it changed and its hours")
  void entries() {
    assertThat(file(day("North Field", false)))
        .startsWith("BEGIN:VCALENDAR\r\n")
        .endsWith("END:VCALENDAR\r\n")
        .contains(
            "VERSION:2.0\r\n",
            "UID:fit-day-" + DAY + "@tapeline\r\n",
            "DTSTAMP:20260801T150607Z\r\n",
            "SEQUENCE:2\r\n",
            "DTSTART:20260804T223000Z\r\n",
            "DTEND:20260805T010000Z\r\n",
            "STATUS:CONFIRMED\r\n",
            "DESCRIPTION:3 booked\\, 17 free\r\n")
        .containsOnlyOnce("DTSTAMP")
        .doesNotContain("ATTENDEE", "ORGANIZER");
  }

  @Test
  @DisplayName("says that a cancelled day does not take place, and nothing more of it")
  void cancelled() {
    assertThat(file(day("North Field", true, "5:30 PM Ada")))
        .contains("STATUS:CANCELLED\r\n", "DESCRIPTION:Does not take place.\r\n")
        .doesNotContain("Ada", "booked");
  }

  @Test
  @DisplayName("has CRLF line ends and no line over 75 octets, also with accents")
  void lines() {
    String file = file(day("Campo de José, Peña y Ñandú ".repeat(9), false, "é".repeat(200)));
    assertThat(file.replace("\r\n", "")).doesNotContain("\n", "\r");
    for (String line : file.split("\r\n")) {
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
    }
  }

  @Test
  @DisplayName("reads back what was written, with commas, semicolons, breaks and accents")
  void readBack() throws IOException, ParserException {
    String place = "Field 2, north; gate ".repeat(6) + "Peña";
    Calendar read =
        new CalendarBuilder()
            .build(new StringReader(file(day(place, false, "5:30 PM José", "6:00 PM Ana; Bea"))));
    VEvent event = (VEvent) read.getComponent("VEVENT").orElseThrow();
    assertThat(event.getLocation().getValue()).isEqualTo(place);
    assertThat(event.getSummary().getValue()).isEqualTo("Fit day at " + place);
    assertThat(event.getDescription().getValue())
        .isEqualTo("3 booked, 17 free\n5:30 PM José\n6:00 PM Ana; Bea");
    assertThat(event.getSequence().getSequenceNo()).isEqualTo(2);
    assertThat(event.getStatus().getValue()).isEqualTo("CONFIRMED");
    assertThat(read.validate().hasErrors()).isFalse();
  }

  @Test
  @DisplayName("of no day at all can be read too")
  void empty() {
    assertThat(file())
        .contains("BEGIN:VCALENDAR\r\n", "END:VCALENDAR\r\n")
        .doesNotContain("VEVENT");
  }
}
