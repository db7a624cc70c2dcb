package org.tapeline.inventory.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.stock.StockPolicy.Reason;

@DisplayName("The policy of the books")
class StockPolicyTest {
  private static final List<Reason> REASONS = List.of(new Reason("lost", "Lost"));

  private static StockPolicy policy(String begins, List<Reason> reasons) {
    return new StockPolicy(1, "test", begins, reasons, REASONS);
  }

  @Test
  @DisplayName("says in which season a day is")
  void season() {
    StockPolicy policy = policy("08-01", REASONS);
    LocalDate begun = LocalDate.of(2026, 8, 1);
    assertThat(policy.seasonOf(LocalDate.of(2026, 7, 31))).isEqualTo(begun.minusYears(1));
    assertThat(policy.seasonOf(begun)).isEqualTo(begun);
    assertThat(policy.seasonOf(LocalDate.of(2027, 3, 1))).isEqualTo(begun);
  }

  @Test
  @DisplayName("in force has the reasons that people look for")
  void inForce() {
    StockPolicy policy = new StockPolicyFile().inForce();
    assertThat(policy.countReasons())
        .extracting(Reason::code)
        .contains("miscounted-before", "lost", "found", "broken", "not-booked", "other");
    assertThat(policy.explainsVariance("lost")).isTrue();
    assertThat(policy.explainsVariance("")).isFalse();
    assertThat(policy.explainsMove("delivered")).isTrue();
  }

  @Test
  @DisplayName("without a day, a source or reasons, or with one listed twice, is refused")
  void refused() {
    assertThatThrownBy(() -> policy("1 August", REASONS)).hasMessageContaining("08-01");
    assertThatThrownBy(() -> policy("08-01", List.of())).hasMessageContaining("reasons");
    assertThatThrownBy(() -> policy("08-01", List.of(REASONS.getFirst(), REASONS.getFirst())))
        .hasMessageContaining("twice");
    assertThatThrownBy(() -> policy("08-01", List.of(new Reason("Lost!", "Lost"))))
        .hasMessageContaining("code");
    assertThatThrownBy(() -> new StockPolicy(1, " ", "08-01", REASONS, REASONS))
        .hasMessageContaining("source");
  }
}
