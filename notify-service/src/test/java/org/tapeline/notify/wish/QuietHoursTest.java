package org.tapeline.notify.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Zones with a change of clock at 2:00, at 1:00 UTC, by half an hour, at midnight, and without. */
@Label("Quiet hours")
class QuietHoursTest {
  private static final ZoneId DENVER = ZoneId.of("America/Denver");
  private static final List<String> ZONES =
      List.of(
          "America/Denver",
          "America/New_York",
          "America/Phoenix",
          "Pacific/Honolulu",
          "Europe/London",
          "Australia/Lord_Howe",
          "America/Santiago",
          "Asia/Kolkata");

  private static QuietHours night(ZoneId zone) {
    return new QuietHours(LocalTime.of(21, 0), LocalTime.of(7, 0), zone);
  }

  private static Instant at(String text) {
    return Instant.parse(text);
  }

  @Example
  @Label("hold what is due at night till the morning, on the person's own clock")
  void night() {
    QuietHours night = night(DENVER);
    assertThat(night.endAfter(at("2025-09-13T02:59:59Z"))).isEmpty();
    assertThat(night.endAfter(at("2025-09-13T03:00:00Z"))).contains(at("2025-09-13T13:00:00Z"));
    assertThat(night.endAfter(at("2025-09-13T12:59:59Z"))).contains(at("2025-09-13T13:00:00Z"));
    assertThat(night.endAfter(at("2025-09-13T13:00:00Z"))).isEmpty();
    assertThat(night(ZoneId.of("Europe/London")).at(at("2025-09-13T03:00:00Z"))).isTrue();
    QuietHours noon = new QuietHours(LocalTime.of(12, 0), LocalTime.of(14, 0), DENVER);
    assertThat(noon.endAfter(at("2025-09-13T19:30:00Z"))).contains(at("2025-09-13T20:00:00Z"));
  }

  @Example
  @Label("are an hour shorter or longer in the night in which the clock changes")
  void changeOfClock() {
    // Put forward on 9 March 2025, back on 2 November 2025, both at 2:00.
    Instant march = at("2025-03-09T04:00:00Z");
    assertThat(night(DENVER).endAfter(march)).contains(march.plus(Duration.ofHours(9)));
    Instant november = at("2025-11-02T03:00:00Z");
    assertThat(night(DENVER).endAfter(november)).contains(november.plus(Duration.ofHours(11)));
  }

  @Example
  @Label("end as the clock jumps over their end, and once after an hour that comes twice")
  void endInTheJump() {
    QuietHours early = new QuietHours(LocalTime.of(21, 0), LocalTime.of(2, 30), DENVER);
    assertThat(early.endAfter(at("2025-03-09T08:00:00Z"))).contains(at("2025-03-09T09:00:00Z"));
    QuietHours twice = new QuietHours(LocalTime.of(21, 0), LocalTime.of(1, 30), DENVER);
    assertThat(twice.endAfter(at("2025-11-02T07:10:00Z"))).contains(at("2025-11-02T07:30:00Z"));
    assertThat(twice.endAfter(at("2025-11-02T08:10:00Z"))).contains(at("2025-11-02T08:30:00Z"));
  }

  @Example
  @Label("that begin when they end are none, and are refused")
  void refused() {
    LocalTime nine = LocalTime.of(9, 0);
    assertThatIllegalArgumentException().isThrownBy(() -> new QuietHours(nine, nine, DENVER));
  }

  /** Minutes about a change of clock, or about any day of a zone without one. */
  @Provide
  Arbitrary<Instant> instants() {
    return Arbitraries.of(ZONES)
        .flatMap(
            id -> {
              List<ZoneOffsetTransition> changes = changes(ZoneId.of(id));
              return Arbitraries.of(
                  changes.isEmpty() ? List.of(at("2025-06-01T00:00:00Z")) : instants(changes));
            })
        .flatMap(
            change ->
                Arbitraries.integers()
                    .between(-36 * 60, 36 * 60)
                    .map(minutes -> change.plus(Duration.ofMinutes(minutes))));
  }

  private static List<Instant> instants(List<ZoneOffsetTransition> changes) {
    return changes.stream().map(ZoneOffsetTransition::getInstant).toList();
  }

  private static List<ZoneOffsetTransition> changes(ZoneId zone) {
    ZoneOffsetTransition first = zone.getRules().nextTransition(at("2025-01-01T00:00:00Z"));
    if (first == null) {
      return List.of();
    }
    ZoneOffsetTransition second = zone.getRules().nextTransition(first.getInstant());
    return second == null ? List.of(first) : List.of(first, second);
  }

  @Provide
  Arbitrary<String> zones() {
    return Arbitraries.of(ZONES);
  }

  @Property(tries = 2000)
  @Label(
      "end after now, when it is not quiet, and as soon as that but for the hour that comes twice")
  void anyZone(
      @ForAll("zones") String zone,
      @ForAll("instants") Instant now,
      @ForAll @IntRange(min = 0, max = 95) int from,
      @ForAll @IntRange(min = 1, max = 95) int length) {
    LocalTime begin = LocalTime.of(from / 4, from % 4 * 15);
    QuietHours hours = new QuietHours(begin, begin.plusMinutes(15L * length), ZoneId.of(zone));
    Optional<Instant> end = hours.endAfter(now);
    assertThat(end.isPresent()).isEqualTo(hours.at(now));
    if (end.isPresent()) {
      assertThat(end.get()).isAfter(now).isBefore(now.plus(Duration.ofHours(50)));
      assertThat(hours.at(end.get())).isFalse();
      for (Instant m = now; m.isBefore(end.get()); m = m.plus(Duration.ofMinutes(15))) {
        ZonedDateTime clock = m.atZone(ZoneId.of(zone));
        boolean twice =
            clock.getZone().getRules().getValidOffsets(clock.toLocalDateTime()).size() == 2;
        assertThat(twice || hours.at(m)).as("quiet at %s", m).isTrue();
      }
      assertThat(hours.at(end.get().minusSeconds(1))).isTrue();
    }
  }
}
