package org.tapeline.sizing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.tapeline.sizing.units.Millimetres;

@Label("A measurement of any readings")
class MeasurementPropertyTest {

  @Property
  @Label("is never less sure with a third reading, and lies between the readings")
  void thirdReading(
      @ForAll @DoubleRange(min = 400, max = 660) double first,
      @ForAll @DoubleRange(min = -5, max = 5) double apart,
      @ForAll @DoubleRange(min = 400, max = 660) double third,
      @ForAll @DoubleRange(min = 0.2, max = 8) double errorMm) {
    Measurement two = measured(errorMm, first, first + 0.999 * apart);
    Measurement three = measured(errorMm, first, first + 0.999 * apart, third);
    assertThat(three.uncertainty()).isLessThan(two.uncertainty());
    for (Measurement m : List.of(two, three)) {
      double[] mm = m.readings().stream().mapToDouble(r -> r.length().value()).toArray();
      assertThat(m.value().value())
          .isBetween(
              DoubleStream.of(mm).min().getAsDouble(), DoubleStream.of(mm).max().getAsDouble());
    }
  }

  private static Measurement measured(double errorMm, double... mm) {
    List<Reading> readings =
        DoubleStream.of(mm).mapToObj(m -> new Reading(m + " mm", new Millimetres(m))).toList();
    return ((Measurement.Result.Ok) Measurement.of(readings, errorMm)).measurement();
  }
}
