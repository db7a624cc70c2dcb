package org.tapeline.sizing.measurer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The repeat error of a measurer")
class RepeatErrorTest {

  // Pairs and result: docs/references.md, B (recomputed).
  @Test
  @DisplayName("is the technical error of measurement of the pairs")
  void ofThePairs() {
    int[][] pairs = {{540, 542}, {555, 553}, {530, 530}, {561, 564}, {548, 547}};
    double squares = 0;
    for (int[] pair : pairs) {
      squares += Math.pow(pair[0] - pair[1], 2);
    }
    assertThat(new RepeatError(5, squares).observedMm()).isCloseTo(1.341641, within(1e-6));
  }

  @Test
  @DisplayName("is the assumed one while nothing is known")
  void unknown() {
    assertThat(RepeatError.UNKNOWN.mm()).isEqualTo(2.0);
    assertThat(RepeatError.UNKNOWN.large()).isFalse();
  }

  @Test
  @DisplayName("comes near the measurer's own as pairs gather")
  void shrinks() {
    assertThat(of(5, 4).mm()).isBetween(2.0, 3.0);
    assertThat(of(2_000, 4).mm()).isCloseTo(4, within(0.05));
  }

  @Test
  @DisplayName("is called large only when that is clear")
  void large() {
    assertThat(of(5, 4).large()).isFalse();
    assertThat(of(60, 4).large()).isTrue();
    assertThat(of(2_000, 2.9).large()).isFalse();
  }

  @Property
  void liesBetweenTheAssumedAndTheObservedOne(
      @ForAll @IntRange(min = 1, max = 5_000) int pairs,
      @ForAll @DoubleRange(min = 0.1, max = 20) double tem) {
    double mm = of(pairs, tem).mm();
    assertThat(mm).isBetween(Math.min(2, tem) - 1e-9, Math.max(2, tem) + 1e-9);
    assertThat(of(pairs, tem).below(0.9)).isGreaterThan(of(pairs, tem).below(0.1));
  }

  private static RepeatError of(int pairs, double tem) {
    return new RepeatError(pairs, 2 * pairs * tem * tem);
  }
}
