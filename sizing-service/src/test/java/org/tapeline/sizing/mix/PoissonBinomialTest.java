package org.tapeline.sizing.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

@Label("A count of independent chances")
class PoissonBinomialTest {

  @Property
  @Label("has the mean and the variance that theory gives, and sums to 1")
  void moments(@ForAll("chances") double[] chances) {
    CountDistribution counts = PoissonBinomial.of(chances);
    assertThat(Arrays.stream(counts.chances()).sum()).isCloseTo(1, within(1e-12));
    assertThat(counts.mean()).isCloseTo(Arrays.stream(chances).sum(), within(1e-9));
    double second = 0;
    for (int k = 0; k <= chances.length; k++) {
      second += counts.chance(k) * Math.pow(k - counts.mean(), 2);
    }
    double variance = Arrays.stream(chances).map(p -> p * (1 - p)).sum();
    assertThat(second).isCloseTo(variance, within(1e-9));
  }

  @Property
  @Label("is the same whether it is taken one by one or alike ones together")
  void alike(
      @ForAll @IntRange(min = 0, max = 80) int many,
      @ForAll @DoubleRange(min = 0, max = 1) double chance) {
    double[] each = new double[many];
    Arrays.fill(each, chance);
    CountDistribution one = PoissonBinomial.of(each);
    CountDistribution together = PoissonBinomial.ofAlike(many, chance);
    for (int k = 0; k <= many; k++) {
      assertThat(together.chance(k)).isCloseTo(one.chance(k), within(1e-12));
    }
  }

  @Property
  @Label("adds up like the counts themselves")
  void sums(@ForAll("chances") double[] some, @ForAll("chances") double[] others) {
    double[] all = Arrays.copyOf(some, some.length + others.length);
    System.arraycopy(others, 0, all, some.length, others.length);
    CountDistribution whole = PoissonBinomial.of(all);
    CountDistribution sum = PoissonBinomial.of(some).plus(PoissonBinomial.of(others));
    for (int k = 0; k <= all.length; k++) {
      assertThat(sum.chance(k)).isCloseTo(whole.chance(k), within(1e-12));
    }
  }

  @Provide
  Arbitrary<double[]> chances() {
    return Arbitraries.doubles().between(0, 1).array(double[].class).ofMinSize(1).ofMaxSize(40);
  }
}
