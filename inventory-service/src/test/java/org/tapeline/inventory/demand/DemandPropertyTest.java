package org.tapeline.inventory.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Whatever is asked for, the levels keep what they promise and the money is kept to. */
class DemandPropertyTest {
  private static final int TRIES = 150;

  @Property(tries = TRIES)
  void chancesSumToOneAndTheMeanIsKept(
      @ForAll @DoubleRange(min = 0.05, max = 50) double shape,
      @ForAll @DoubleRange(min = 0, max = 300) double mean) {
    DemandCount demand = DemandCount.negativeBinomial(shape, mean);
    assertThat(demand.atMost(200_000)).isEqualTo(1);
    assertThat(demand.expectedShort(0)).isEqualTo(demand.mean());
    double before = demand.mean();
    for (int there = 1; there < 50; there++) {
      double missing = demand.expectedShort(there);
      assertThat(before - missing).isBetween(-1e-6, 1.0 + 1e-6);
      assertThat(before - missing).isCloseTo(1 - demand.atMost(there - 1), within(1e-6));
      before = missing;
    }
  }

  @Property(tries = TRIES)
  void whatIsLearnedInPartsIsWhatIsLearnedAtOnce(
      @ForAll @IntRange(max = 40) int first, @ForAll @IntRange(max = 40) int second) {
    DemandRate prior = DemandRate.around(0.01, 2);
    DemandRate parts = prior.after(first, 200).after(second, 100);
    DemandRate atOnce = prior.after(first + second, 300);
    assertThat(parts.mean()).isCloseTo(atOnce.mean(), within(1e-12));
    LeadTime lead = LeadTime.around(3, 4, 0.3).after(List.of(2.0 + first, 5.0));
    assertThat(lead.medianDays()).isBetween(2.0, 2.0 + first + 3);
  }

  @Property(tries = TRIES)
  void theLevelsAreTheLowestThatKeepThePromise(
      @ForAll @IntRange(min = 5, max = 1000) int tenThousandths,
      @ForAll @IntRange(min = 1, max = 400) int players,
      @ForAll @IntRange(min = 1, max = 25) int lot,
      @ForAll @DoubleRange(min = 0.5, max = 0.98) double promised) {
    Horizon horizon =
        Horizon.of(
            DemandRate.around(tenThousandths / 10_000.0, 2),
            players,
            LeadTime.around(3, 4, 0.35),
            2);
    StockLevels levels = StockLevels.keeping(promised, horizon, lot);
    assertThat(levels.fillRate()).isGreaterThanOrEqualTo(promised);
    assertThat(StockLevels.fillRate(horizon, levels.reorderPoint() - 1, lot))
        .isLessThan(levels.reorderPoint() < 0 ? 1 : promised);
    for (int position = -5; position < levels.upTo() + 5; position++) {
      int order = levels.order(position);
      assertThat(order % lot).isZero();
      assertThat(position + order).isGreaterThan(levels.reorderPoint());
      assertThat(order == 0 || position + order <= levels.upTo()).isTrue();
    }
  }

  @Property(tries = TRIES)
  void theMoneyIsKeptToAndCasesComeFirst(
      @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 6) Integer> packs,
      @ForAll @IntRange(max = 40) int money) {
    List<Budget.Want> wants = new ArrayList<>();
    for (int n : packs) {
      wants.add(new Budget.Want(n * 2, 2, n % 3, 1 - n % 3, n, DemandCount.poisson(n)));
    }
    List<Integer> bought = Budget.within(money, wants);
    long spent = 0;
    boolean caseLeft = false;
    boolean shelf = false;
    for (int i = 0; i < wants.size(); i++) {
      Budget.Want want = wants.get(i);
      assertThat(bought.get(i)).isBetween(0, want.quantity());
      spent += bought.get(i) / 2 * want.packCost();
      caseLeft |= bought.get(i) < Math.min(want.waiting(), want.quantity());
      shelf |= bought.get(i) >= want.waiting() + 2;
    }
    assertThat(spent).isLessThanOrEqualTo(money);
    assertThat(caseLeft && shelf && spent + 6 <= money).isFalse();
  }

  @Property(tries = TRIES)
  void ofEqualCostNoOtherChoiceAvoidsMore(
      @ForAll @Size(value = 3) List<@IntRange(min = 1, max = 9) Integer> means,
      @ForAll @IntRange(max = 12) int packs) {
    List<Budget.Want> wants =
        means.stream()
            .map(m -> new Budget.Want(8, 2, 0, 0, 10, DemandCount.negativeBinomial(2, m)))
            .toList();
    List<Integer> bought = Budget.within(10L * packs, wants);
    double best = 0;
    for (int a = 0; a <= 4; a++) {
      for (int b = 0; b <= 4; b++) {
        int c = Math.min(4, packs - a - b);
        if (c >= 0) {
          best = Math.max(best, avoided(wants, List.of(2 * a, 2 * b, 2 * c)));
        }
      }
    }
    assertThat(avoided(wants, bought)).isCloseTo(best, within(1e-9));
  }

  private static double avoided(List<Budget.Want> wants, List<Integer> bought) {
    double sum = 0;
    for (int i = 0; i < wants.size(); i++) {
      DemandCount demand = wants.get(i).demand();
      sum += demand.expectedShort(0) - demand.expectedShort(bought.get(i));
    }
    return sum;
  }
}
