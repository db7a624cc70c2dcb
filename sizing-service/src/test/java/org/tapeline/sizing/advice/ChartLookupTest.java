package org.tapeline.sizing.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.sizing.advice.SizeAdvice.Outcome;
import org.tapeline.sizing.chart.DemoLikeChart;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("Size advice")
class ChartLookupTest {
  private static final double UNCERTAINTY = 2.8;

  @ParameterizedTest(name = "{0} in: {1}")
  @DisplayName("puts known heads where the trade does (common practice, no published source)")
  @CsvSource({"21, youth-medium", "22.875, youth-large"})
  void checkValues(double inches, String size) {
    SizeAdvice advice = advise(Millimetres.ofInches(inches).value());
    assertThat(advice.outcome()).isEqualTo(Outcome.IN_SIZE);
    assertThat(advice.size()).contains(size);
    assertThat(advice.second()).isEmpty();
  }

  @Test
  @DisplayName("between two sizes is the smaller (common practice, no published source)")
  void between() {
    SizeAdvice advice = advise(557.5);
    assertThat(advice.outcome()).isEqualTo(Outcome.BETWEEN_SIZES);
    assertThat(advice.size()).contains("youth-medium");
    assertThat(advice.second()).contains("youth-large");
    assertThat(advice.reason()).contains("between Youth medium and Youth large", "smaller");
  }

  @ParameterizedTest(name = "{0} mm: {1}, also {2}")
  @DisplayName("brings a second helmet when an edge is nearer than the uncertainty")
  @CsvSource({
    "554,   youth-medium, youth-large",
    "553.2, youth-medium, ",
    "561,   youth-large,  youth-medium",
    "522,   youth-medium, youth-small",
    "496,   youth-small,  ",
    "619,   youth-x-large, ",
  })
  void nearAnEdge(double mm, String size, String second) {
    SizeAdvice advice = advise(mm);
    assertThat(advice.outcome()).isEqualTo(Outcome.IN_SIZE);
    assertThat(advice.size()).contains(size);
    assertThat(advice.second()).isEqualTo(Optional.ofNullable(second));
    assertThat(advice.reason().contains("bring")).isEqualTo(second != null);
  }

  @ParameterizedTest(name = "{0} mm: {1}, perhaps {2}")
  @DisplayName("outside of the chart names no size, and says what to do")
  @CsvSource({
    "480, TOO_SMALL,",
    "494, TOO_SMALL, youth-small",
    "640, TOO_LARGE,",
    "621, TOO_LARGE, youth-x-large",
  })
  void outside(double mm, Outcome outcome, String second) {
    SizeAdvice advice = advise(mm);
    assertThat(advice.outcome()).isEqualTo(outcome);
    assertThat(advice.size()).isEmpty();
    assertThat(advice.second()).isEqualTo(Optional.ofNullable(second));
    assertThat(advice.reason()).contains("of this model");
  }

  @ParameterizedTest(name = "{0} mm: {1}")
  @DisplayName("takes both edges of a size as inside")
  @CsvSource({"495, youth-small", "556, youth-medium", "559, youth-large", "620, youth-x-large"})
  void edges(double mm, String size) {
    assertThat(advise(mm).size()).contains(size);
  }

  @Test
  @DisplayName("gives its reason in plain words, with the head in inches and millimetres")
  void reason() {
    assertThat(advise(533.4).reason()).isEqualTo("21 in (533 mm) lies in Youth medium.");
    assertThat(advise(554).reason())
        .isEqualTo(
            "21 13/16 in (554 mm) lies in Youth medium. The tape may be off by ± 3 mm, so bring"
                + " Youth large as well.");
    assertThat(advise(533.4).chartVersion()).isEqualTo(1);
    assertThat(advise(533.4).model()).isEqualTo("model-a");
  }

  private static SizeAdvice advise(double mm) {
    return ChartLookup.look(
        DemoLikeChart.modelA(), new Millimetres(mm), new Millimetres(UNCERTAINTY));
  }
}
