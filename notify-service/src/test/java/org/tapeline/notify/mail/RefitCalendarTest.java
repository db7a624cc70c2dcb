package org.tapeline.notify.mail;

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
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A calendar file (RFC 5545)")
class RefitCalendarTest {
  private static final UUID CASE = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d22");
  private static final Instant WRITTEN = Instant.parse("2025-09-12T17:04:05Z");
  private static final Instant STARTS = Instant.parse("2025-09-13T15:00:00Z");

  private static final RefitCalendar CALENDAR = new RefitCalendar(new Settings());

  private static String file(String summary, String place) {
    return CALENDAR.write(entry(3, summary, place));
  }

  private static RefitCalendar.Entry entry(int revision, String summary, String place) {
    return new RefitCalendar.Entry(
        CASE,
        revision,
        WRITTEN,
        STARTS,
        STARTS.plusSeconds(1200),
        summary,
        place,
        "Traiga el casco y venga con José, por favor; gracias.");
  }

  @Test
  @DisplayName("carries the case's own UID, the revision, the stamp and no family's address")
  void fields() {
    assertThat(file("Nuevo ajuste del casco: José", "North Field"))
        .contains(
            "METHOD:PUBLISH\r\n",
            "UID:refit-" + CASE + "@larkfield.example.org\r\n",
            "SEQUENCE:3\r\n",
            "DTSTAMP:20250912T170405Z\r\n",
            "DTSTART:20250913T150000Z\r\n",
            "DTEND:20250913T152000Z\r\n")
        .contains("ORGANIZER:mailto:notices@larkfield.example.org\r\n", "STATUS:CONFIRMED\r\n")
        .doesNotContain("ATTENDEE");
  }

  @Test
  @DisplayName("has CRLF line ends and no line over 75 octets")
  void lines() {
    String file = file("Nuevo ajuste del casco: " + "José ".repeat(30), "North Field");
    assertThat(file.replace("\r\n", "")).doesNotContain("\n", "\r");
    for (String line : file.split("\r\n")) {
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
    }
  }

  @Test
  @DisplayName("reads back what was written, with commas, semicolons and accents")
  void roundTrip() throws IOException, ParserException {
    Calendar read =
        new CalendarBuilder()
            .build(new StringReader(file("Ajuste, casco; José", "Field 2, north; gate")));
    VEvent event = (VEvent) read.getComponent("VEVENT").orElseThrow();
    assertThat(event.getSummary().getValue()).isEqualTo("Ajuste, casco; José");
    assertThat(event.getLocation().getValue()).isEqualTo("Field 2, north; gate");
  }

  @Test
  @DisplayName("that calls a date off has the same UID, a higher revision and the method CANCEL")
  void calledOff() throws IOException, ParserException {
    Calendar booked = read(CALENDAR.write(entry(3, "Ajuste", "North Field")));
    Calendar off = read(CALENDAR.cancel(List.of(entry(4, "Ajuste", "North Field"))));
    assertThat(off.getProperty(Property.METHOD).orElseThrow().getValue()).isEqualTo("CANCEL");
    assertThat(event(off).getStatus().getValue()).isEqualTo("CANCELLED");
    assertThat(event(off).getUid()).isEqualTo(event(booked).getUid());
    assertThat(event(off).getSequence().getSequenceNo())
        .isGreaterThan(event(booked).getSequence().getSequenceNo());
  }

  @Test
  @DisplayName("is valid by RFC 5545 and by its method")
  void valid() throws IOException, ParserException {
    for (String file :
        List.of(
            CALENDAR.write(entry(3, "Ajuste", "North Field")),
            CALENDAR.cancel(List.of(entry(4, "Ajuste", "North Field"))))) {
      assertThat(read(file).validate(true).getEntries()).as(file).isEmpty();
    }
  }

  private static Calendar read(String file) throws IOException, ParserException {
    return new CalendarBuilder().build(new StringReader(file));
  }

  private static VEvent event(Calendar calendar) {
    return (VEvent) calendar.getComponent("VEVENT").orElseThrow();
  }
}
