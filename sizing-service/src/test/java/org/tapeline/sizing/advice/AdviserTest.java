package org.tapeline.sizing.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.advice.SizeAdvice.Outcome;
import org.tapeline.sizing.chart.DemoLikeChart;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("Advice for all models")
class AdviserTest {
  private static final SizeChart MODEL_A = DemoLikeChart.modelA();
  private static final SizeChart SMALL_ONES =
      new SizeChart(
          "model-s",
          1,
          List.of(new SizeRange("youth-small", new Millimetres(470), new Millimetres(500))));

  @Test
  @DisplayName("names the model that has a size, where another has none")
  void otherModel() {
    List<SizeAdvice> advice = advise(540, Hair.USUAL, MODEL_A, SMALL_ONES);
    assertThat(advice.get(1).outcome()).isEqualTo(Outcome.TOO_LARGE);
    assertThat(advice.get(1).reason())
        .contains("above the largest size")
        .endsWith("Try Model A (Youth medium).");
  }

  @Test
  @DisplayName("sends to the makers when no model has a size")
  void specialOrder() {
    assertThat(advise(640, Hair.USUAL, MODEL_A, SMALL_ONES))
        .allMatch(a -> a.size().isEmpty())
        .allMatch(a -> a.reason().endsWith("ask a helmet maker for a special order."));
  }

  @Test
  @DisplayName("is less sure of a size over braids, says so, and brings a second helmet sooner")
  void braids() {
    SizeAdvice usual = advise(550, Hair.USUAL, MODEL_A).getFirst();
    SizeAdvice braids = advise(550, Hair.BRAIDS, MODEL_A).getFirst();
    assertThat(usual.second()).isEmpty();
    assertThat(braids.second()).contains("youth-large");
    assertThat(braids.reason()).contains("Braids change the fit");
    assertThat(chance(braids, "youth-large")).isGreaterThan(chance(usual, "youth-large"));
  }

  // A normal distribution of 3 mm around 559, the edge: half lies above it.
  @Test
  @DisplayName("halves the chance at an edge between two sizes")
  void atAnEdge() {
    SizeAdvice advice =
        Adviser.advise(
                List.of(MODEL_A),
                Map.of(),
                new Millimetres(559),
                new Millimetres(3 * 1.959964),
                Hair.USUAL)
            .getFirst();
    assertThat(chance(advice, "youth-large")).isCloseTo(0.5, within(1e-6));
    assertThat(chance(advice, "youth-medium")).isCloseTo(0.5, within(1e-6));
  }

  private static double chance(SizeAdvice advice, String size) {
    return advice.chances().sizes().stream()
        .filter(c -> c.size().equals(size))
        .findFirst()
        .orElseThrow()
        .chance();
  }

  private static List<SizeAdvice> advise(double mm, Hair hair, SizeChart... charts) {
    return Adviser.advise(
        List.of(charts), Map.of(), new Millimetres(mm), new Millimetres(2.8), hair);
  }
}
