package org.tapeline.inventory.reconditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What is written when helmets come back")
class ReceiptTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 1);

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"45, 4500", "45.5, 4550", "45.50, 4550", "'', 0", "0.07, 7"})
  @DisplayName("has the cost to the cent")
  void cost(String typed, long cents) {
    assertThat(receipt("rejected", "", typed).cents()).isEqualTo(cents);
  }

  @ParameterizedTest
  @ValueSource(strings = {"45,50", "-1", "about 45", "45.555", "1000000"})
  @DisplayName("is refused with a cost that can be read in two ways")
  void costRefused(String typed) {
    assertThatThrownBy(() -> receipt("rejected", "", typed).cents()).hasMessageContaining("45.50");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "2026-12-01", "2026-13-01", "next year", "2062-12-01"})
  @DisplayName("is refused without a day to come on the label of what is certified again")
  void untilRefused(String typed) {
    assertThatThrownBy(() -> receipt("recertified", typed, "").until(TODAY))
        .hasMessageContaining("2028-12-01");
  }

  @Test
  @DisplayName("needs no label where nothing was certified")
  void noLabel() {
    assertThat(receipt("as-it-went", "2027-01-01", "").until(TODAY)).isEmpty();
    assertThat(receipt("recertified", "2027-01-01", "").until(TODAY))
        .contains(LocalDate.of(2027, 1, 1));
  }

  private static Receipt receipt(String outcome, String until, String cost) {
    return new Receipt(outcome, until, cost, null, List.of("A", "A"));
  }
}
