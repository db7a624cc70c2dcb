package org.tapeline.sizing.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.units.Millimetres;

@Label("Size advice for any chart")
class ChartLookupPropertyTest {

  @Property
  @Label("never falls when the head grows")
  void monotone(
      @ForAll("charts") SizeChart chart,
      @ForAll @DoubleRange(min = 400, max = 700) double one,
      @ForAll @DoubleRange(min = 400, max = 700) double other,
      @ForAll @DoubleRange(min = 0, max = 10) double uncertainty) {
    int smaller = rank(chart, Math.min(one, other), uncertainty);
    int larger = rank(chart, Math.max(one, other), uncertainty);
    assertThat(smaller).isLessThanOrEqualTo(larger);
  }

  @Property
  @Label("names a second size that is a neighbour of the first, or the end of the chart")
  void neighbours(
      @ForAll("charts") SizeChart chart,
      @ForAll @DoubleRange(min = 400, max = 700) double mm,
      @ForAll @DoubleRange(min = 0, max = 10) double uncertainty) {
    SizeAdvice advice = look(chart, mm, uncertainty);
    List<String> sizes = chart.sizes().stream().map(SizeRange::size).toList();
    advice
        .second()
        .ifPresent(
            second -> {
              int distance =
                  advice
                      .size()
                      .map(size -> Math.abs(sizes.indexOf(size) - sizes.indexOf(second)))
                      .orElse(1);
              assertThat(distance).isEqualTo(1);
            });
    assertThat(advice.reason()).isNotBlank();
  }

  @Property
  @Label("gives every size a chance, and all chances together are 1")
  void chances(
      @ForAll("charts") SizeChart chart,
      @ForAll @DoubleRange(min = 400, max = 700) double mm,
      @ForAll @DoubleRange(min = 0, max = 30) double uncertainty) {
    SizeChances chances = look(chart, mm, uncertainty).chances();
    double all = chances.sizes().stream().mapToDouble(SizeChances.Chance::chance).sum();
    assertThat(all + chances.below() + chances.above()).isCloseTo(1, within(1e-9));
    assertThat(chances.sizes()).allMatch(c -> c.chance() >= 0).hasSameSizeAs(chart.sizes());
  }

  @Property
  @Label("makes a larger size no less likely when the head is larger")
  void chancesRise(
      @ForAll("charts") SizeChart chart,
      @ForAll @DoubleRange(min = 400, max = 700) double one,
      @ForAll @DoubleRange(min = 400, max = 700) double other) {
    SizeChances smaller = look(chart, Math.min(one, other), 6).chances();
    SizeChances larger = look(chart, Math.max(one, other), 6).chances();
    double atMost = smaller.below();
    double largerAtMost = larger.below();
    for (int i = 0; i < chart.sizes().size(); i++) {
      assertThat(largerAtMost).isLessThanOrEqualTo(atMost + 1e-9);
      atMost += smaller.sizes().get(i).chance();
      largerAtMost += larger.sizes().get(i).chance();
    }
  }

  /** Below the chart -1, above it one more than the largest size. */
  private static int rank(SizeChart chart, double mm, double uncertainty) {
    SizeAdvice advice = look(chart, mm, uncertainty);
    List<String> sizes = chart.sizes().stream().map(SizeRange::size).toList();
    return switch (advice.outcome()) {
      case TOO_SMALL -> -1;
      case IN_SIZE, BETWEEN_SIZES -> sizes.indexOf(advice.size().orElseThrow());
      case TOO_LARGE -> sizes.size();
    };
  }

  private static SizeAdvice look(SizeChart chart, double mm, double uncertainty) {
    return ChartLookup.look(chart, new Millimetres(mm), new Millimetres(uncertainty));
  }

  /** Charts of one to five sizes, each with its width and the gap above it. */
  @Provide
  Arbitrary<SizeChart> charts() {
    Arbitrary<Double> width = Arbitraries.doubles().between(5, 40);
    return width
        .list()
        .ofMinSize(2)
        .ofMaxSize(10)
        .map(
            lengths -> {
              List<SizeRange> sizes = new ArrayList<>();
              double from = 450;
              for (int i = 0; i + 1 < lengths.size(); i += 2) {
                double to = from + lengths.get(i);
                sizes.add(new SizeRange("size-" + i, new Millimetres(from), new Millimetres(to)));
                from = to + lengths.get(i + 1) / 10;
              }
              return new SizeChart("model-x", 1, sizes);
            });
  }
}
