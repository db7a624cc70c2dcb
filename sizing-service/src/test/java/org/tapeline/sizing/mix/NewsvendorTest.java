package org.tapeline.sizing.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How many to order")
class NewsvendorTest {

  // Factory Physics 2.4.2, from memory (docs/references.md, E): Poisson 10, h 15, b 25: 11.
  @Test
  @DisplayName("agrees with the base stock of the textbook")
  void baseStock() {
    CountDistribution need = poisson(10);
    assertThat(need.atMost(9)).isCloseTo(0.457930, within(1e-6));
    assertThat(need.atMost(10)).isCloseTo(0.583040, within(1e-6));
    assertThat(need.atMost(14)).isCloseTo(0.916542, within(1e-6));
    assertThat(need.expectedShort(10)).isCloseTo(1.251100, within(1e-6));
    assertThat(need.expectedShort(14)).isCloseTo(0.186937, within(1e-6));
    assertThat(new Newsvendor(25, 15).have(need)).isEqualTo(11);
  }

  // N(3192, 1181), price 180, cost 110, salvage 90, from memory (docs/references.md, E): ratio
  // .7778, Q 4095.1; at 3500 lost sales 333.1. In whole pieces: the first that reaches the ratio.
  @Test
  @DisplayName("agrees with the newsvendor of the textbook")
  void newsvendor() {
    Newsvendor costs = new Newsvendor(180 - 110, 110 - 90);
    CountDistribution need = normal(3192, 1181);
    assertThat(costs.ratio()).isCloseTo(0.7778, within(1e-4));
    assertThat(costs.have(need)).isBetween(4095, 4096);
    assertThat(need.expectedShort(3500)).isCloseTo(333.1, within(0.5));
  }

  // N(1000, 200), 140/100/90 (docs/references.md, E): Q 1168.3, lost sales 22.33.
  @Test
  @DisplayName("agrees with the second textbook case")
  void second() {
    CountDistribution need = normal(1000, 200);
    assertThat(new Newsvendor(40, 10).have(need)).isBetween(1168, 1169);
    assertThat(need.expectedShort(1168)).isCloseTo(22.33, within(0.1));
  }

  @Test
  @DisplayName("is net of what is usable, never below none, and costs least there")
  void netOfStock() {
    CountDistribution need = poisson(10);
    Newsvendor costs = new Newsvendor(25, 15);
    assertThat(costs.order(need, 4)).isEqualTo(7);
    assertThat(costs.order(need, 40)).isZero();
    for (int there = 0; there < 30; there++) {
      assertThat(costs.atRisk(need, there)).isGreaterThanOrEqualTo(costs.atRisk(need, 11));
    }
  }

  private static CountDistribution poisson(double mean) {
    PoissonDistribution poisson = PoissonDistribution.of(mean);
    double[] chances = new double[120];
    for (int k = 0; k < chances.length; k++) {
      chances[k] = poisson.probability(k);
    }
    return CountDistribution.trimmed(0, chances);
  }

  /** In whole pieces, each with the share around it. */
  private static CountDistribution normal(double mean, double spread) {
    NormalDistribution normal = NormalDistribution.of(mean, spread);
    double[] chances = new double[12_000];
    chances[0] = normal.cumulativeProbability(0.5);
    for (int k = 1; k < chances.length; k++) {
      chances[k] = normal.probability(k - 0.5, k + 0.5);
    }
    return CountDistribution.trimmed(0, chances);
  }
}
