package org.tapeline.inventory.reconditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.reconditioning.SomeHelmets.SMALL;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.reconditioning.FleetHelmet.Kind;
import org.tapeline.inventory.reconditioning.Needs.At;

@DisplayName("The season's need")
class NeedRulesTest {
  private static final Kind SMALL_B = new Kind("model-b", "youth-small");
  private static final At NORTH = new At(SMALL, "NORTH");

  @Test
  @DisplayName("is the high end of the forecast, with what is spare, rounded up")
  void withSpare() {
    Needs needs = needs(Map.of(SMALL, 41), Map.of(), Map.of(), fleet(3, 0), 0.1);
    assertThat(needs.inAll(SMALL)).hasValue(46);
  }

  @Test
  @DisplayName("is divided among the models as their helmets are")
  void shared() {
    Needs needs = needs(Map.of(SMALL, 40, SMALL_B, 40), Map.of(), Map.of(), fleet(3, 1), 0);
    assertThat(needs.inAll(SMALL)).hasValue(30);
    assertThat(needs.inAll(SMALL_B)).hasValue(10);
  }

  @Test
  @DisplayName("is the players at a place whose size it is, and who waits there")
  void atPlace() {
    Needs needs = needs(Map.of(SMALL, 40), Map.of(NORTH, 12), Map.of(NORTH, 2), fleet(3, 0), 0);
    assertThat(needs.at(SMALL, "NORTH")).isEqualTo(14);
    assertThat(needs.inAll(SMALL)).hasValue(42);
    assertThat(needs.at(SMALL, "RIVER")).isZero();
  }

  @Test
  @DisplayName("is not known without a forecast, even where somebody waits")
  void notKnown() {
    Needs needs = needs(Map.of(), Map.of(), Map.of(NORTH, 2), fleet(3, 0), 0);
    assertThat(needs.inAll(SMALL)).isEmpty();
    assertThat(needs.at(SMALL, "NORTH")).isEqualTo(2);
  }

  private static Needs needs(
      Map<Kind, Integer> forecast,
      Map<At, Integer> advised,
      Map<At, Integer> waiting,
      List<FleetHelmet> fleet,
      double spare) {
    return NeedRules.of(new NeedRules.Known(forecast, advised, waiting), fleet, spare);
  }

  private static List<FleetHelmet> fleet(int a, int b) {
    List<FleetHelmet> fleet = new ArrayList<>();
    for (int i = 0; i < a + b; i++) {
      fleet.add(
          new FleetHelmet(
              "T" + i,
              i < a ? "model-a" : "model-b",
              "youth-small",
              "DEPOT",
              "available",
              LocalDate.of(2025, 5, 1),
              Optional.empty(),
              Optional.empty()));
    }
    return fleet;
  }
}
