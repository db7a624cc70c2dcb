package org.tapeline.notify.digest;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A day's digest is due")
class DigestHourTest {
  private static final ZoneId DENVER = ZoneId.of("America/Denver");
  private static final LocalTime MORNING = LocalTime.of(6, 30);

  private static Optional<LocalDate> due(String now, LocalTime hour) {
    return DigestHour.due(Instant.parse(now), DENVER, hour);
  }

  @Test
  @DisplayName("from its hour on, on the clock of the place, until midnight")
  void fromTheHourOn() {
    assertThat(due("2026-08-04T12:29:59Z", MORNING)).isEmpty();
    assertThat(due("2026-08-04T12:30:00Z", MORNING)).contains(LocalDate.of(2026, 8, 4));
    assertThat(due("2026-08-05T05:59:59Z", MORNING)).contains(LocalDate.of(2026, 8, 4));
    assertThat(due("2026-08-05T06:00:00Z", MORNING)).isEmpty();
  }

  @Test
  @DisplayName("an hour later by the sun in winter than in summer")
  void followsTheClock() {
    assertThat(due("2026-01-12T13:29:59Z", MORNING)).isEmpty();
    assertThat(due("2026-01-12T13:30:00Z", MORNING)).isPresent();
  }

  @Test
  @DisplayName("an hour later when the clock jumps over its hour in spring")
  void springForward() {
    assertThat(due("2026-03-08T09:29:59Z", LocalTime.of(2, 30))).isEmpty();
    assertThat(due("2026-03-08T09:30:00Z", LocalTime.of(2, 30))).isPresent();
  }

  @Test
  @DisplayName("at the first of two when the clock goes back over it in autumn")
  void fallBack() {
    assertThat(due("2026-11-01T07:29:59Z", LocalTime.of(1, 30))).isEmpty();
    assertThat(due("2026-11-01T07:30:00Z", LocalTime.of(1, 30))).isPresent();
    assertThat(due("2026-11-01T08:30:00Z", LocalTime.of(1, 30)))
        .contains(LocalDate.of(2026, 11, 1));
  }

  @Test
  @DisplayName("on every day of a year, whenever somebody looks")
  void everyDay() {
    Set<LocalDate> days = new HashSet<>();
    Instant start = Instant.parse("2026-01-01T07:00:00Z");
    for (int minute = 0; minute < 365 * 24 * 60; minute += 7) {
      DigestHour.due(start.plusSeconds(minute * 60L), DENVER, LocalTime.of(2, 30))
          .ifPresent(days::add);
    }
    assertThat(days).hasSize(365);
  }
}
