package org.tapeline.inventory.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A free helmet")
class FreeHelmetTest {
  private static final LocalDate TODAY = LocalDate.parse("2026-08-01");

  @Test
  @DisplayName("may be worn until its label says, or until its last age when that comes first")
  void label() {
    assertThat(days("2025-05-15", "2026-08-31")).hasValue(30);
    assertThat(days("2017-08-11", "2027-08-31")).hasValue(9);
  }

  @Test
  @DisplayName("has its model's interval when no label was read, and none when that is over")
  void noLabel() {
    assertThat(days("2026-08-01", "")).hasValue(365);
    assertThat(days("2025-05-15", "")).hasValue(0);
  }

  @Test
  @DisplayName("is none once its last age is reached, whatever its label says")
  void tooOld() {
    assertThat(days("2017-08-02", "2027-08-31")).hasValue(0);
    assertThat(days("2017-08-01", "2027-08-31")).isEmpty();
    Kind kind = new Kind("model-a", "youth-large");
    assertThatThrownBy(() -> new FreeHelmet("T1", kind, "NORTH", -1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static OptionalInt days(String made, String certified) {
    return FreeHelmet.daysLeft(
        TODAY,
        LocalDate.parse(made),
        Optional.of(certified).filter(c -> !c.isEmpty()).map(LocalDate::parse),
        12,
        9);
  }
}
