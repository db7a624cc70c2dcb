package org.tapeline.sizing.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.reading.Measurement.Method;
import org.tapeline.sizing.reading.Measurement.Result;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("A measurement")
class MeasurementTest {

  @Test
  @DisplayName("is the mean of two readings that agree")
  void meanOfTwo() {
    Measurement m = measured(532, 535);
    assertThat(m.value()).isEqualTo(new Millimetres(533.5));
    assertThat(m.method()).isEqualTo(Method.MEAN_OF_TWO);
  }

  @Test
  @DisplayName("still is the mean at exactly 5 mm (maximum allowable difference: WHO MGRS, memory)")
  void atTheTolerance() {
    assertThat(measured(530, 535).value()).isEqualTo(new Millimetres(532.5));
  }

  @Test
  @DisplayName("needs a third reading beyond 5 mm (WHO MGRS, memory)")
  void beyondTheTolerance() {
    assertThat(Measurement.of(readings(530, 535.1), 2))
        .isInstanceOfSatisfying(
            Result.ThirdNeeded.class,
            needed -> assertThat(needed.apart().value()).isCloseTo(5.1, within(1e-9)));
  }

  @Test
  @DisplayName("is the median of three, so that one slip does not count")
  void medianOfThree() {
    Measurement m = measured(530, 560, 533);
    assertThat(m.value()).isEqualTo(new Millimetres(533));
    assertThat(m.method()).isEqualTo(Method.MEDIAN_OF_THREE);
  }

  @Test
  @DisplayName("keeps the readings in the order in which they were taken")
  void order() {
    assertThat(measured(535, 531).readings()).isEqualTo(readings(535, 531));
  }

  @Test
  @DisplayName("is not made of one reading, nor of four")
  void wrongNumber() {
    assertThatThrownBy(() -> Measurement.of(readings(530), 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Measurement.of(readings(530, 531, 532, 533), 2))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName(
      "is surer with three readings (variance of a median of three: 0.44867, references.md)")
  void uncertainty() {
    double two = measured(532, 532).uncertainty().value();
    double three = measured(532, 532, 532).uncertainty().value();
    assertThat(three).isLessThan(two);
    assertThat(three / two).isCloseTo(Math.sqrt(0.44867 / 0.5), within(1e-9));
    assertThat(two).isCloseTo(2.77, within(0.01));
  }

  @Test
  @DisplayName("is surer the steadier the measurer is")
  void steadyHand() {
    assertThat(uncertainty(1.5)).isCloseTo(uncertainty(3) / 2, within(1e-9));
  }

  private static double uncertainty(double errorMm) {
    return ((Result.Ok) Measurement.of(readings(532, 533), errorMm))
        .measurement()
        .uncertainty()
        .value();
  }

  private static Measurement measured(double... mm) {
    return switch (Measurement.of(readings(mm), 2)) {
      case Result.Ok ok -> ok.measurement();
      case Result.ThirdNeeded needed -> throw new AssertionError(needed.toString());
    };
  }

  private static List<Reading> readings(double... mm) {
    return DoubleStream.of(mm)
        .mapToObj(value -> new Reading(value + " mm", new Millimetres(value)))
        .toList();
  }
}
