package org.tapeline.fitting.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.fitting.recheck.Air.Outside;

/** Figures: docs/references.md, D. */
@DisplayName("Air in a liner")
class AirTest {
  private static final double FEET = 0.3048;

  @ParameterizedTest(name = "{0} m: {1} Pa")
  @CsvSource({
    "0, 101325",
    "500, 95460.8",
    "1000, 89874.6",
    "1500, 84556.0",
    "2000, 79495.2",
    "2500, 74682.5",
    "3000, 70108.5",
    "1609.344, 83427.6"
  })
  @DisplayName("is under the pressure of ISO 2533 / US Standard Atmosphere 1976, to 1 Pa")
  void pressure(double metres, double pascals) {
    assertThat(Air.pressurePascals(metres)).isCloseTo(pascals, within(1.0));
  }

  @ParameterizedTest(name = "{0} psi, {1} to {2} °C at {3} ft: {4} psi")
  @CsvSource({
    "2, 21, 4, 0, 1.0351",
    "2, 20, 0, 0, 0.8609",
    "2, 20, 35, 0, 2.8543",
    "2, 20, 20, 5280, 4.5952"
  })
  @DisplayName("would read so on a gauge if it were sealed and could not give, by the gas law")
  void sealed(double psi, double fit, double now, double feet, double expected) {
    double pascals =
        Air.sealedGaugePascals(
            psi * Air.PASCALS_PER_PSI, new Outside(fit, 0), new Outside(now, feet * FEET));
    assertThat(pascals / Air.PASCALS_PER_PSI).isCloseTo(expected, within(1e-3));
  }

  @Test
  @DisplayName("agrees with the textbook's ball: 12.5 psi at 75 °F reads 11.228 psi at 50 °F")
  void textbook() {
    double pascals =
        Air.sealedGaugePascals(
            12.5 * Air.PASCALS_PER_PSI,
            new Outside((75 - 32) / 1.8, 0),
            new Outside((50 - 32) / 1.8, 0));
    assertThat(pascals / Air.PASCALS_PER_PSI).isCloseTo(11.228, within(1e-3));
  }

  @Test
  @DisplayName("takes V2/V1 = (T2/T1)(P1/P2): less in the cold, more up high, the same unchanged")
  void room() {
    assertThat(Air.roomRatio(new Outside(21, 240), new Outside(4, 240)))
        .isCloseTo(277.15 / 294.15, within(1e-12));
    assertThat(Air.roomRatio(new Outside(20, 0), new Outside(20, 1000)))
        .isCloseTo(101_325 / 89_874.6, within(1e-4));
    assertThat(Air.roomRatio(new Outside(21, 240), new Outside(21, 240))).isEqualTo(1);
  }

  @Test
  @DisplayName("is not reckoned for what no field has")
  void refused() {
    for (double celsius : new double[] {-60.1, 60.1, Double.NaN}) {
      assertThatIllegalArgumentException().isThrownBy(() -> new Outside(celsius, 0));
    }
    for (double metres : new double[] {-501, 9001, Double.NaN}) {
      assertThatIllegalArgumentException().isThrownBy(() -> new Outside(0, metres));
    }
    assertThat(new Outside(-60, -500)).isNotEqualTo(new Outside(60, 9000));
  }
}
