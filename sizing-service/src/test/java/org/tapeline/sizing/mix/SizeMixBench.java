package org.tapeline.sizing.mix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.tapeline.sizing.chart.DemoLikeChart;
import org.tapeline.sizing.growth.Kiggs;
import org.tapeline.sizing.growth.Sex;

/** How long a size mix takes, side by side in one run. Started by {@code deploy/bench}. */
final class SizeMixBench {
  private static final int ROUNDS = 5;

  private SizeMixBench() {}

  public static void main(String[] args) {
    double small = seconds(10_000, 0.8);
    double large = seconds(100_000, 0.8);
    double unknown = seconds(100_000, 0);
    say("Size mix, 10,000 players, 80 %% known: %.2f s", small);
    say("Size mix, 100,000 players, 80 %% known: %.2f s, %.1f times as long", large, large / small);
    say(
        "Size mix, 100,000 players, none known: %.2f s, %.2f times the one before",
        unknown, unknown / large);
  }

  /** The median of some rounds after one that does not count. */
  private static double seconds(int players, double shareKnown) {
    Random random = new Random(11);
    List<SizeMix.Known> known = new ArrayList<>();
    List<SizeMix.Unknown> unknown = new ArrayList<>();
    for (int i = 0; i < players; i++) {
      if (random.nextDouble() < shareKnown) {
        known.add(new SizeMix.Known(538 + 16 * random.nextGaussian(), 1.4));
      } else {
        Sex sex = random.nextInt(8) == 0 ? Sex.FEMALE : Sex.MALE;
        unknown.add(new SizeMix.Unknown(Optional.of(sex), 7 + 8 * random.nextDouble()));
      }
    }
    SizeMix mix = new SizeMix(DemoLikeChart.modelA(), Kiggs.reference(), OwnHeads.of(List.of()));
    double[] seconds = new double[ROUNDS];
    for (int round = -1; round < ROUNDS; round++) {
      long start = System.nanoTime();
      mix.counts(known, unknown);
      if (round >= 0) {
        seconds[round] = (System.nanoTime() - start) / 1e9;
      }
    }
    Arrays.sort(seconds);
    return seconds[ROUNDS / 2];
  }

  private static void say(String form, Object... values) {
    System.out.println(String.format(Locale.ROOT, form, values));
  }
}
