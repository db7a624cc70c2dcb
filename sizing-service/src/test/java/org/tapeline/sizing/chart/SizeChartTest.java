package org.tapeline.sizing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tapeline.sizing.chart.DemoLikeChart.modelA;
import static org.tapeline.sizing.chart.DemoLikeChart.range;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("A size chart")
class SizeChartTest {

  @Test
  @DisplayName("stands in order from small to large, in whatever order it was written")
  void sorted() {
    SizeChart chart =
        new SizeChart("model-a", 1, List.of(range("large", 560, 590), range("small", 500, 520)));
    assertThat(chart.sizes()).extracting(SizeRange::size).containsExactly("small", "large");
  }

  @Test
  @DisplayName("may have gaps between sizes")
  void gaps() {
    assertThat(SizeChart.faults(List.of(range("small", 500, 520), range("large", 560, 590))))
        .isEmpty();
  }

  @Test
  @DisplayName("has no overlap, not even of one edge, since both edges are inclusive")
  void overlap() {
    assertThat(SizeChart.faults(List.of(range("small", 500, 521), range("large", 520, 560))))
        .containsExactly("Small and Large overlap");
    assertThat(SizeChart.faults(List.of(range("large", 520, 560), range("small", 500, 520))))
        .containsExactly("Small and Large overlap");
  }

  @Test
  @DisplayName("names each size once")
  void namedTwice() {
    assertThat(SizeChart.faults(List.of(range("small", 500, 520), range("small", 521, 560))))
        .containsExactly("A size is named twice");
  }

  @Test
  @DisplayName("cannot be made with a fault, without a size, or with a version below 1")
  void refused() {
    List<SizeRange> overlapping = List.of(range("small", 500, 521), range("large", 520, 560));
    assertThatThrownBy(() -> new SizeChart("model-a", 1, overlapping)).hasMessageContaining("over");
    List<SizeRange> none = List.of();
    assertThatThrownBy(() -> new SizeChart("model-a", 1, none))
        .isInstanceOf(IllegalArgumentException.class);
    List<SizeRange> good = List.of(range("small", 500, 520));
    assertThatThrownBy(() -> new SizeChart("model-a", 0, good))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName("has ranges that run upwards and sizes that are words")
  void ranges() {
    assertThatThrownBy(() -> range("small", 520, 500)).hasMessageContaining("upside down");
    assertThatThrownBy(() -> range("small", 520, 520)).hasMessageContaining("upside down");
    assertThatThrownBy(() -> range("Youth small", 500, 520)).hasMessageContaining("Not a size");
  }

  @Test
  @DisplayName("holds a head at both edges of a size")
  void edges() {
    SizeRange size = range("youth-small", 500, 520);
    assertThat(size.holds(new Millimetres(500))).isTrue();
    assertThat(size.holds(new Millimetres(520))).isTrue();
    assertThat(size.holds(new Millimetres(499.9))).isFalse();
    assertThat(size.holds(new Millimetres(520.1))).isFalse();
    assertThat(size.said()).isEqualTo("Youth small");
    assertThat(SizeRange.said("youth-x-large")).isEqualTo("Youth extra large");
  }

  @Test
  @DisplayName("is the same by its sizes, whatever its version")
  void same() {
    SizeChart again = new SizeChart("model-a", 2, modelA().sizes());
    assertThat(modelA().sameSizesAs(again)).isTrue();
    SizeChart other = new SizeChart("model-a", 2, List.of(range("youth-small", 500, 520)));
    assertThat(modelA().sameSizesAs(other)).isFalse();
  }
}
