package org.tapeline.inventory.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** docs/references.md, E. */
@DisplayName("Stock")
class StockReferencesTest {

  // Factory Physics 2.4.2, from memory: Poisson 10, h 15, b 25: base stock 11.
  @Test
  @DisplayName("agrees with the base stock of the textbook")
  void baseStock() {
    DemandCount demand = DemandCount.poisson(10);
    assertThat(demand.atMost(9)).isCloseTo(0.457930, within(1e-6));
    assertThat(demand.atMost(10)).isCloseTo(0.583040, within(1e-6));
    assertThat(demand.atMost(14)).isCloseTo(0.916542, within(1e-6));
    assertThat(demand.expectedShort(10)).isCloseTo(1.251100, within(1e-6));
    assertThat(demand.expectedShort(14)).isCloseTo(0.186937, within(1e-6));
    assertThat(demand.quantile(25.0 / (25 + 15))).isEqualTo(11);
  }

  // Order-up-to, 1.5 a day, lead time 3 days and a review each day (textbook, from memory).
  @Test
  @DisplayName("ordered up to a level is there as often as the textbook has it")
  void orderUpTo() {
    DemandCount overLeadAndReview = DemandCount.poisson(1.5 * (3 + 1));
    assertThat(overLeadAndReview.atMost(8)).isCloseTo(0.84724, within(1e-5));
  }

  // The same case, S 9: .9107 of the demand is served from the shelf (textbook, from memory).
  @Test
  @DisplayName("serves the share of demand that the textbook has")
  void fillRate() {
    Horizon horizon = new Horizon(DemandCount.poisson(1.5 * 3), DemandCount.poisson(1.5 * (3 + 1)));
    assertThat(StockLevels.fillRate(horizon, 8, 1)).isCloseTo(0.9107, within(1e-4));
  }

  // Standard table, from memory; in steps of a thousandth of the standard deviation.
  @ParameterizedTest(name = "at {0}: {1}")
  @CsvSource({"0,.39894", "0.5,.19780", "1,.08332", "1.5,.02931", "2,.00849"})
  @DisplayName("agrees with the normal loss")
  void normalLoss(double z, double loss) {
    DemandCount demand = inPieces(NormalDistribution.of(10_000, 1000), 20_000);
    int there = (int) Math.round(10_000 + 1000 * z);
    assertThat(demand.expectedShort(there) / 1000).isCloseTo(loss, within(6e-6));
  }

  // N(3192, 1181), price 180, cost 110, salvage 90 (textbook, from memory, recomputed); demand
  // below none, which has a chance of .3 %, is none here.
  @Test
  @DisplayName("agrees with the newsvendor of the textbook")
  void newsvendor() {
    DemandCount demand = inPieces(NormalDistribution.of(3192, 1181), 12_000);
    double ratio = (180 - 110.0) / (180 - 90);
    assertThat(ratio).isCloseTo(0.7778, within(1e-4));
    assertThat(demand.quantile(ratio)).isBetween(4095, 4096);
    assertThat(demand.expectedShort(3500)).isCloseTo(333.1, within(0.5));
    double sold = 3192 - demand.expectedShort(3500);
    assertThat((180 - 110) * sold - (110 - 90) * (3500 - sold)).isCloseTo(187_302, within(100.0));
  }

  // N(1000, 200), 140/100/90: the question found, the answer recomputed.
  @Test
  @DisplayName("agrees with the second newsvendor")
  void secondNewsvendor() {
    DemandCount demand = inPieces(NormalDistribution.of(1000, 200), 3000);
    assertThat(demand.quantile(40.0 / 50)).isBetween(1168, 1169);
    double missing = demand.expectedShort(1168);
    assertThat(missing).isCloseTo(22.33, within(0.1));
    assertThat(40 * (1000 - missing) - 10 * (168 + missing)).isCloseTo(37_200, within(5.0));
  }

  @Test
  @DisplayName("agrees with the economic lot: K 10, D 1000, h .5: 200 at 100 a year")
  void economicLot() {
    EconomicLot lot = new EconomicLot(10, 1000, 0.5);
    assertThat(lot.pieces()).isCloseTo(200, within(1e-9));
    assertThat(lot.cost(200)).isCloseTo(100, within(1e-9));
    assertThat(lot.packs(30)).isEqualTo(210);
    assertThat(new EconomicLot(0, 1000, 0.5).packs(30)).isEqualTo(30);
  }

  // By the gamma-Poisson mixture: shape 3 and mean 6 give (3/9)^3 for none, and so on.
  @Test
  @DisplayName("knows the negative binomial")
  void negativeBinomial() {
    DemandCount demand = DemandCount.negativeBinomial(3, 6);
    assertThat(demand.atMost(0)).isCloseTo(1.0 / 27, within(1e-12));
    assertThat(demand.atMost(1)).isCloseTo(1.0 / 27 + 3 * 2.0 / 3 / 27, within(1e-12));
    assertThat(demand.expectedShort(0)).isEqualTo(6);
    assertThat(DemandCount.mixed(List.of(demand, demand)).expectedShort(7))
        .isCloseTo(demand.expectedShort(7), within(1e-9));
    assertThat(DemandCount.negativeBinomial(5000, 4000).quantile(0.5)).isBetween(3990, 4010);
  }

  /** Each piece with the share around it. */
  private static DemandCount inPieces(ContinuousDistribution demand, int most) {
    double[] chances = new double[most];
    chances[0] = demand.cumulativeProbability(0.5);
    for (int k = 1; k < most; k++) {
      chances[k] = demand.probability(k - 0.5, k + 0.5);
    }
    return DemandCount.ofChances(chances);
  }
}
