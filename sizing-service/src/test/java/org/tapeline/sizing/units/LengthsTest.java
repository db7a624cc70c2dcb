package org.tapeline.sizing.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A length")
class LengthsTest {

  @ParameterizedTest(name = "{0} mm is {1}")
  @DisplayName("is said in inches to the nearest sixteenth, the fraction in lowest terms")
  @CsvSource({
    "533.4, 21 in",
    "581.025, 22 7/8 in",
    "581, 22 7/8 in",
    "534.9875, 21 1/16 in",
    "536.575, 21 1/8 in",
    "539.75, 21 1/4 in",
    "546.1, 21 1/2 in",
    "557.9, 21 15/16 in",
    "558.7, 22 in",
  })
  void sixteenths(double mm, String said) {
    assertThat(Inches.say(new Millimetres(mm))).isEqualTo(said);
  }

  @ParameterizedTest(name = "a head of {0} cm is hat size {1}")
  @DisplayName("agrees with hat sizes: inches over pi to the nearest eighth (references.md, A)")
  @CsvSource({"56, 7.0", "57, 7.125", "58, 7.25", "59, 7.375", "60, 7.5"})
  void hatSizes(double cm, double hatSize) {
    double eighths = Math.round(new Millimetres(cm * 10).inches() / Math.PI * 8) / 8.0;
    assertThat(eighths).isEqualTo(hatSize);
  }

  @Test
  @DisplayName("of an inch is 25.4 mm, there and back")
  void inch() {
    assertThat(Millimetres.ofInches(21)).isEqualTo(new Millimetres(533.4));
    assertThat(new Millimetres(533.4).inches()).isCloseTo(21, within(1e-12));
  }

  @Test
  @DisplayName("lies as far from another as the other from it")
  void apart() {
    Millimetres shorter = new Millimetres(530);
    Millimetres longer = new Millimetres(537);
    assertThat(shorter.apartFrom(longer)).isEqualTo(longer.apartFrom(shorter));
    assertThat(shorter.apartFrom(longer)).isEqualTo(new Millimetres(7));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
  @DisplayName("is never negative nor without end")
  void refused(double mm) {
    assertThatThrownBy(() -> new Millimetres(mm)).isInstanceOf(IllegalArgumentException.class);
  }
}
