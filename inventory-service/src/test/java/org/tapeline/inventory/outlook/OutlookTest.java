package org.tapeline.inventory.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.outlook.Outlook.Answer;
import org.tapeline.inventory.outlook.Outlook.Question;
import org.tapeline.inventory.outlook.Outlook.Year;

@DisplayName("The outlook of purchases")
class OutlookTest {
  private static final double[] NONE = new double[400];

  @Test
  @DisplayName("buys what gets too old, in the season for which it is missing")
  void tooOld() {
    Answer answer = ask(3, NONE, need(10), cohort(2027, 7), cohort(2028, 3), cohort(2040, 0));
    assertThat(buys(answer)).containsExactly(0, 7, 3);
    assertThat(answer.inAll()).extracting(y -> y.tooOld().middle()).containsExactly(0, 7, 3);
  }

  @Test
  @DisplayName("buys at once what is missing, and less where there are too many")
  void missing() {
    assertThat(buys(ask(2, NONE, need(10), cohort(2040, 4)))).containsExactly(6, 0);
    assertThat(buys(ask(2, NONE, need(10), cohort(2027, 5), cohort(2040, 8))))
        .containsExactly(0, 2);
  }

  @Test
  @DisplayName("lets what was bought get old in its turn")
  void newOnesAge() {
    Question q = new Question(2027, 4, false, List.of(), List.of(need(5)), NONE, 0, 0, 2, 1, 1);
    assertThat(buys(Outlook.of(q))).containsExactly(5, 0, 5, 0);
  }

  @Test
  @DisplayName("follows the growth of the roster")
  void growth() {
    Question q =
        new Question(
            2027, 3, false, List.of(cohort(2040, 100)), List.of(need(100)), NONE, .1, 0, 9, 1, 1);
    assertThat(buys(Outlook.of(q))).containsExactly(0, 10, 11);
  }

  /**
   * n 5, a 2, b 3: what is rejected must be bought again, so its chances are those of references,
   * E.
   */
  @Test
  @DisplayName("agrees with the exact beta-binomial on a single batch")
  void exact() {
    int runs = 20_000;
    double[] shares = new RejectionShare(2, 3, 0, 0).spread(runs);
    Question q =
        new Question(
            2027, 1, true, List.of(cohort(2040, 5)), List.of(need(5)), shares, 0, 0, 9, 1, 7);
    Year first = Outlook.of(q).inAll().getFirst();
    assertThat(first.buy().mean()).isCloseTo(5 * .4, within(.03));
    assertThat(first.buy().low()).isZero();
    assertThat(first.buy().middle()).isEqualTo(2);
    assertThat(first.buy().high()).isEqualTo(4);
  }

  @Test
  @DisplayName("agrees with a convolution where the need is not sure either")
  void convolution() {
    double[] rejected = BetaBinomial.chances(12, 2, 3);
    double[] need = {.25, .5, .25};
    double exact = 0;
    for (int r = 0; r < rejected.length; r++) {
      for (int n = 0; n < need.length; n++) {
        exact += rejected[r] * need[n] * Math.max(0, 9 + n - (12 - r));
      }
    }
    // A normal need of mean 10 that is rounded to 9, 10 and 11 in the quarters above.
    double sd = .5 / .67449;
    double[] shares = new RejectionShare(2, 3, 0, 0).spread(20_000);
    Question q =
        new Question(
            2027,
            1,
            true,
            List.of(cohort(2040, 12)),
            List.of(new SizeNeed("s", 10, sd)),
            shares,
            0,
            0,
            9,
            1,
            7);
    assertThat(Outlook.of(q).inAll().getFirst().buy().mean()).isCloseTo(exact, within(.06));
  }

  @Test
  @DisplayName("says the same of the same data, and has a narrower range in all than in the sum")
  void deterministic() {
    Question q =
        new Question(
            2027,
            5,
            true,
            List.of(cohort(2030, 60), new Cohort("m", 2029, .5, 40)),
            List.of(new SizeNeed("s", 55, 4), new SizeNeed("m", 44, 5)),
            new RejectionShare(1, 19, 2, 50).spread(500),
            0,
            .02,
            9,
            .5,
            3);
    Answer answer = Outlook.of(q);
    assertThat(Outlook.of(q)).isEqualTo(answer);
    Year all = answer.inAll().get(2);
    int sum =
        answer.bySize().stream()
            .filter(y -> y.season() == all.season())
            .mapToInt(y -> y.buy().high() - y.buy().low())
            .sum();
    assertThat(all.buy().high() - all.buy().low()).isLessThanOrEqualTo(sum);
  }

  @Test
  @DisplayName("draws rejected helmets with the binomial's mean and spread")
  void binomial() {
    SplittableRandom random = new SplittableRandom(11);
    int[] counts = new int[20_000];
    Arrays.setAll(counts, i -> Draws.binomial(50, .1, random));
    double mean = Arrays.stream(counts).average().orElseThrow();
    double variance =
        Arrays.stream(counts).mapToDouble(c -> (c - mean) * (c - mean)).sum() / 19_999;
    assertThat(mean).isCloseTo(5, within(.06));
    assertThat(variance).isCloseTo(4.5, within(.2));
    assertThat(Draws.binomial(50, 0, random)).isZero();
    assertThat(Draws.binomial(50, 1, random)).isEqualTo(50);
  }

  private static Answer ask(int years, double[] shares, SizeNeed need, Cohort... fleet) {
    return Outlook.of(
        new Question(2027, years, true, List.of(fleet), List.of(need), shares, 0, 0, 9, 1, 1));
  }

  private static Cohort cohort(int lastSeason, int helmets) {
    return new Cohort("s", lastSeason, 1, helmets);
  }

  private static SizeNeed need(double expected) {
    return new SizeNeed("s", expected, 0);
  }

  private static List<Integer> buys(Answer answer) {
    return answer.inAll().stream().map(y -> y.buy().middle()).toList();
  }
}
