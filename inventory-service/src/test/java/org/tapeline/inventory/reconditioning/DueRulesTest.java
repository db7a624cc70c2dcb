package org.tapeline.inventory.reconditioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.inventory.policy.HelmetPolicy;
import org.tapeline.inventory.reconditioning.Standing.Reason;
import org.tapeline.inventory.reconditioning.Standing.Why;

@DisplayName("A helmet is due")
class DueRulesTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 8, 1);
  private static final LocalDate BY = LocalDate.of(2026, 11, 15);
  private static final HelmetRules.ForModel RULES = new HelmetRules.ForModel(24, 9);

  private LocalDate made = LocalDate.of(2025, 5, 15);
  private Optional<LocalDate> label = Optional.of(LocalDate.of(2027, 6, 1));
  private Optional<LocalDate> reconditioned = Optional.empty();
  private String state = "available";

  @Test
  @DisplayName("not while label, interval, age and condition are good")
  void notDue() {
    assertThat(standing().isDue()).isFalse();
    assertThat(standing().wearableThrough()).isEqualTo("2027-06-01");
  }

  @Test
  @DisplayName("when its certification ends by the day")
  void certification() {
    label = Optional.of(BY);
    assertThat(standing().reasons()).containsExactly(new Reason(Why.CERTIFICATION, BY));
    label = Optional.of(BY.plusDays(1));
    assertThat(standing().isDue()).isFalse();
  }

  @Test
  @DisplayName("when the interval since it was made has passed, and cannot be worn without a label")
  void interval() {
    made = LocalDate.of(2024, 9, 30);
    label = Optional.empty();
    assertThat(standing().reasons())
        .containsExactly(new Reason(Why.INTERVAL, LocalDate.of(2026, 9, 29)));
    assertThat(standing().wearableThrough()).isEqualTo("2026-09-29");
  }

  @Test
  @DisplayName("counting from the last reconditioning where there was one")
  void reconditioned() {
    made = LocalDate.of(2022, 9, 30);
    reconditioned = Optional.of(LocalDate.of(2026, 1, 10));
    assertThat(standing().isDue()).isFalse();
  }

  @Test
  @DisplayName("when its last age is near, and no label makes it younger")
  void lastAge() {
    made = LocalDate.of(2017, 10, 1);
    reconditioned = Optional.of(LocalDate.of(2026, 1, 10));
    assertThat(standing().reasons()).extracting(Reason::why).isEqualTo(List.of(Why.LAST_AGE));
    assertThat(standing().wearableThrough()).isEqualTo("2026-09-30");
  }

  @Test
  @DisplayName("when it is in quarantine")
  void findings() {
    state = "quarantined";
    assertThat(standing().reasons()).containsExactly(new Reason(Why.FINDINGS, TODAY));
    assertThat(standing().usableThrough(TODAY)).isFalse();
  }

  private Standing standing() {
    FleetHelmet helmet =
        new FleetHelmet(
            "LV1", "model-a", "youth-small", "DEPOT", state, made, label, reconditioned);
    return DueRules.of(helmet, RULES, TODAY, BY, 30);
  }

  @ParameterizedTest(name = "made {0}, label {1}")
  @CsvSource({"2024-09-30,", "2025-03-31,", "2017-10-01,", "2017-10-01, 2027-06-01", "2024-02-29,"})
  @DisplayName("after the very day that the helmet policy says")
  void asThePolicySays(LocalDate day, LocalDate read) {
    made = day;
    label = Optional.ofNullable(read);
    HelmetPolicy policy =
        new HelmetPolicy(
            1, "example", new HelmetPolicy.Rule(24, 9, HelmetPolicy.Whose.CAUTIOUS), List.of());
    assertThat(standing().wearableThrough())
        .isEqualTo(policy.usableUntil("model-a", day, label, day));
  }
}
