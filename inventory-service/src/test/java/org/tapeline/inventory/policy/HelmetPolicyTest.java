package org.tapeline.inventory.policy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.policy.HelmetPolicy.OfModel;
import org.tapeline.inventory.policy.HelmetPolicy.Rule;
import org.tapeline.inventory.policy.HelmetPolicy.Whose;

@DisplayName("The helmet policy")
class HelmetPolicyTest {
  private static final Rule CAUTIOUS = new Rule(12, 9, Whose.CAUTIOUS);
  private static final LocalDate MADE = LocalDate.parse("2020-02-29");
  private final HelmetPolicy policy =
      new HelmetPolicy(
          1, "a source", CAUTIOUS, List.of(new OfModel("model-a", 24, 9, Whose.MAKER)));

  private LocalDate until(String model, String label) {
    Optional<LocalDate> said =
        label.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(label));
    return policy.usableUntil(model, MADE, said, MADE);
  }

  @Test
  @DisplayName("takes the label's date before any interval, be it sooner or later")
  void label() {
    assertThat(until("model-a", "2021-01-31")).isEqualTo("2021-01-31");
    assertThat(until("model-a", "2024-01-31")).isEqualTo("2024-01-31");
  }

  @Test
  @DisplayName("counts the maker's interval when there is no label")
  void interval() {
    assertThat(until("model-a", "")).isEqualTo("2022-02-27");
  }

  @Test
  @DisplayName("is cautious with a model that is not listed, and never says without end")
  void cautious() {
    assertThat(until("model-z", "")).isEqualTo("2021-02-27");
  }

  @Test
  @DisplayName("counts an interval anew from the last reconditioning")
  void reconditioned() {
    LocalDate since = LocalDate.parse("2023-06-01");
    assertThat(policy.usableUntil("model-a", MADE, Optional.empty(), since))
        .isEqualTo("2025-05-31");
  }

  // NAERA: none is accepted from the 10th year after manufacture; that year begins nine years after
  // it, and the cautious side is taken: the last day is the day before the ninth birthday.
  @Test
  @DisplayName("lets no label outlast the day before the 10th year after manufacture")
  void lastAge() {
    assertThat(policy.lastDay("model-a", MADE)).isEqualTo("2029-02-27");
    assertThat(until("model-a", "2031-01-01")).isEqualTo("2029-02-27");
    assertThat(policy.usableUntil("model-a", MADE, Optional.empty(), LocalDate.parse("2028-12-01")))
        .isEqualTo("2029-02-27");
  }

  @Test
  @DisplayName("says whose rule it is")
  void whose() {
    assertThat(policy.says("model-a")).contains("24 months", "9 years", "the helmet maker's rule");
    assertThat(policy.says("model-z")).contains("12 months", "the cautious rule");
  }

  @Test
  @DisplayName("is refused with two rules for a model, without a source, or with no end of age")
  void refused() {
    OfModel a = new OfModel("model-a", 24, 9, Whose.MAKER);
    assertThatThrownBy(() -> new HelmetPolicy(1, "a source", CAUTIOUS, List.of(a, a)))
        .hasMessageContaining("Two rules for model-a");
    assertThatThrownBy(() -> new HelmetPolicy(1, " ", CAUTIOUS, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Rule(12, 0, Whose.MAKER))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName("as it stands reads well")
  void onFile() {
    assertThat(new HelmetPolicyFile().get().of("model-b").whose()).isEqualTo(Whose.ASSOCIATION);
  }
}
