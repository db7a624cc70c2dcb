package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The minutes for a fit")
class FitMinutesTest {

  private static FitLengths checks(Map<Integer, Long> byMinutes) {
    return FitLengths.of(byMinutes);
  }

  private static int minutes(Map<Integer, Long> field, Map<Integer, Long> association) {
    return FitMinutes.of(checks(field), checks(association)).minutes();
  }

  @Test
  @DisplayName("are 15 where nothing is known, and said so")
  void usual() {
    FitMinutes minutes = FitMinutes.of(FitLengths.NONE, FitLengths.NONE);
    assertThat(minutes.minutes()).isEqualTo(15);
    assertThat(minutes.said()).startsWith("No check at this field");
  }

  @Test
  @DisplayName("leave time for four checks of five at the field, and say how many that were")
  void ofTheField() {
    Map<Integer, Long> field = Map.of(10, 20L, 20, 60L, 25, 100L, 30, 20L);
    FitMinutes minutes = FitMinutes.of(checks(field), checks(field));
    assertThat(minutes.minutes()).isEqualTo(25);
    assertThat(minutes.said())
        .isEqualTo(
            "180 of 200 checks at this field took 25 minutes or less: 25 minutes for a fit.");
  }

  @Test
  @DisplayName("go by the association where the field has few checks of its own")
  void ofTheAssociation() {
    Map<Integer, Long> slow = Map.of(20, 100L, 25, 300L);
    assertThat(minutes(Map.of(), slow)).isEqualTo(25);
    assertThat(minutes(Map.of(10, 3L), slow)).isEqualTo(25);
    assertThat(minutes(Map.of(10, 300L), slow)).isEqualTo(10);
  }

  @Test
  @DisplayName("stay at 15 after a few slow or quick checks")
  void few() {
    assertThat(minutes(Map.of(45, 2L), Map.of(45, 2L))).isEqualTo(15);
    assertThat(minutes(Map.of(5, 2L), Map.of(5, 2L))).isEqualTo(15);
  }

  @Test
  @DisplayName("are not spoilt by one check in ten that ran on")
  void ranOn() {
    Map<Integer, Long> field = Map.of(15, 90L, 120, 10L);
    assertThat(minutes(field, field)).isEqualTo(15);
  }

  @Property(tries = 300)
  void areAMultipleOf5From5To120AndNoFewerForSlowerChecks(
      @ForAll("lengths") Map<Integer, Long> field, @ForAll("lengths") Map<Integer, Long> others) {
    int minutes = minutes(field, others);
    assertThat(minutes % 5).isZero();
    assertThat(minutes).isBetween(5, 120);
    Map<Integer, Long> slower = new HashMap<>();
    field.forEach((length, count) -> slower.merge(Math.min(120, length + 10), count, Long::sum));
    assertThat(minutes(slower, others)).isGreaterThanOrEqualTo(minutes);
  }

  @Provide
  Arbitrary<Map<Integer, Long>> lengths() {
    return Arbitraries.maps(
            Arbitraries.integers().between(1, 24).map(step -> step * 5),
            Arbitraries.longs().between(1, 200))
        .ofMaxSize(6);
  }
}
