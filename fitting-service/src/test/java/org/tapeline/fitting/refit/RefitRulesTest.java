package org.tapeline.fitting.refit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.refit.RefitRules.Arrival;
import org.tapeline.fitting.refit.RefitRules.Ask;
import org.tapeline.fitting.refit.RefitRules.Slot;
import org.tapeline.fitting.session.Need;

@DisplayName("The rules of a re-fit")
class RefitRulesTest {
  private static final Instant NOW = Instant.parse("2026-08-01T15:06:00Z");
  private static final Instant ARRIVES = Instant.parse("2026-08-03T15:00:00Z");
  private static final Need SMALL = Need.helmet("model-a", "youth-small");
  private static final Need MEDIUM = Need.helmet("model-a", "youth-medium");
  private static final Need VALVE = Need.part("valve");
  private static final Need STRAP = Need.part("chin-strap-small");

  private static Ask pulled(Need... needs) {
    return new Ask("damage", Optional.of("LV0001"), List.of(needs));
  }

  private static Ask failed(Need... needs) {
    return new Ask("fit-failed", Optional.of("LV0001"), List.of(needs));
  }

  private static List<Arrival> known(Instant... at) {
    return Arrays.stream(at).map(Optional::of).map(Arrival::new).toList();
  }

  private static Optional<Slot> slot(Instant startsAt) {
    return Optional.of(new Slot(startsAt, startsAt.plusSeconds(900)));
  }

  @Test
  @DisplayName("an open case sees to the same needs, in any order")
  void sameNeeds() {
    assertThat(RefitRules.covers(failed(VALVE, STRAP), failed(STRAP, VALVE))).isTrue();
    assertThat(RefitRules.covers(failed(VALVE, STRAP), failed(STRAP))).isFalse();
  }

  @Test
  @DisplayName("a case that brings a helmet sees to a pulled one, whatever its size")
  void pulledHelmet() {
    assertThat(RefitRules.covers(failed(SMALL), pulled(MEDIUM))).isTrue();
    assertThat(RefitRules.covers(failed(VALVE), pulled(MEDIUM))).isFalse();
  }

  @Test
  @DisplayName("news of a former helmet adds nothing to a case about the one that was tried since")
  void formerHelmet() {
    Ask since = new Ask("fit-failed", Optional.of("LV0002"), List.of(VALVE));
    assertThat(RefitRules.covers(since, pulled(MEDIUM))).isTrue();
  }

  @Test
  @DisplayName("what a fitter found at the head replaces an open case for another size")
  void fitterFound() {
    assertThat(RefitRules.covers(pulled(MEDIUM), failed(SMALL))).isFalse();
  }

  @Test
  @DisplayName("nothing is booked while one need is not known")
  void notKnown() {
    List<Arrival> one = List.of(new Arrival(Optional.of(ARRIVES)), new Arrival(Optional.empty()));
    assertThat(RefitRules.bookFrom(one, Optional.empty(), NOW)).isEmpty();
  }

  @Test
  @DisplayName("a slot is looked for from the last arrival on, and never in the past")
  void from() {
    Instant before = NOW.minusSeconds(3600);
    assertThat(RefitRules.bookFrom(known(NOW, ARRIVES), Optional.empty(), NOW)).contains(ARRIVES);
    assertThat(RefitRules.bookFrom(known(before), Optional.empty(), NOW)).contains(NOW);
    assertThat(RefitRules.bookFrom(List.of(), Optional.empty(), NOW)).contains(NOW);
  }

  @Test
  @DisplayName("a slot at or after the arrival is kept, also when the arrival is earlier now")
  void kept() {
    assertThat(RefitRules.bookFrom(known(ARRIVES), slot(ARRIVES), NOW)).isEmpty();
    assertThat(RefitRules.bookFrom(known(NOW), slot(ARRIVES), NOW)).isEmpty();
  }

  @Test
  @DisplayName("a slot before the arrival is moved")
  void moved() {
    assertThat(RefitRules.bookFrom(known(ARRIVES), slot(ARRIVES.minusSeconds(1)), NOW))
        .contains(ARRIVES);
  }

  @Test
  @DisplayName("a slot counts until its end, and is then looked for anew")
  void over() {
    Instant arrived = NOW.minusSeconds(7200);
    Optional<Slot> ending = Optional.of(new Slot(NOW.minusSeconds(900), NOW.plusMillis(1)));
    Optional<Slot> over = Optional.of(new Slot(NOW.minusSeconds(900), NOW));
    assertThat(RefitRules.bookFrom(known(arrived), ending, NOW)).isEmpty();
    assertThat(RefitRules.bookFrom(known(arrived), over, NOW)).contains(NOW);
  }
}
