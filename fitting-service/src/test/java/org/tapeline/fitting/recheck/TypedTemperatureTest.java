package org.tapeline.fitting.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A typed air temperature")
class TypedTemperatureTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "4; C; 4",
        "39.2; F; 4",
        "39 F; C; 3.9",
        "39°f; C; 3.9",
        "-3,5 °C; F; -3.5",
        "\u22123.5; C; -3.5",
        " +21 ; C; 21",
        "-40; F; -40",
        "140; F; 60",
        "60; C; 60"
      })
  @DisplayName("is read in the unit that stands beside it, else in the one chosen")
  void read(String typed, String unit, double celsius) {
    assertThat(TypedTemperature.celsius(typed, unit)).hasValue(celsius);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "warm", "4 K", "1e1", "60.1", "-40.1", "141 F", "4 C C", "--4"})
  @DisplayName("that is none, or that no field has, is not taken")
  void refused(String typed) {
    assertThat(TypedTemperature.celsius(typed, "C")).isEmpty();
  }

  @Test
  @DisplayName("without a unit is not guessed")
  void noUnit() {
    assertThat(TypedTemperature.celsius("4", "")).isEmpty();
    assertThat(TypedTemperature.celsius("4", null)).isEmpty();
    assertThat(TypedTemperature.celsius(null, "C")).isEmpty();
  }
}
