package org.tapeline.inventory.allocation;

import java.util.Arrays;
import java.util.Locale;
import java.util.Random;

/** How long it takes to hand out helmets, and what is gained by it. Started by deploy/bench. */
final class AllocationBench {
  private static final int ROUNDS = 5;
  private static final FlowSolver SOLVER = new LeastCostFlow();

  private AllocationBench() {}

  public static void main(String[] args) {
    AllocationPolicy policy = AllocationPropertyTest.policy(0);
    Situation forty = new Situations(40, 5_000, 6_000, 5).by(new Random(3));
    Situation many = new Situations(200, 5_000, 6_000, 5).by(new Random(3));
    Situation held = new Situations(200, 20_000, 24_000, 5).by(new Random(3));
    say("Allocation, 5,000 players x 6,000 helmets, 40 fields: %s", timed(forty, policy));
    say("Allocation, 5,000 players x 6,000 helmets, 200 fields: %s", timed(many, policy));
    say("Allocation, 20,000 players x 24,000 helmets, 200 fields: %s", timed(held, policy));
    Allotment best = Allocation.of(many, policy, SOLVER);
    Greedy greedy = Greedy.of(many, policy);
    say(
        "One after the other, 200 fields: %d served for %d minutes; proved best: %d for %d",
        greedy.served(), greedy.minutes(), best.given().size(), best.minutes());
  }

  /** The median of some rounds after one that does not count. */
  private static String timed(Situation situation, AllocationPolicy policy) {
    double[] seconds = new double[ROUNDS];
    Allotment found = null;
    for (int round = -1; round < ROUNDS; round++) {
      long start = System.nanoTime();
      found = Allocation.of(situation, policy, SOLVER);
      if (round >= 0) {
        seconds[round] = (System.nanoTime() - start) / 1e9;
      }
    }
    Arrays.sort(seconds);
    FlowNetwork network = new AllocationNetwork(situation, policy).network;
    return String.format(
        Locale.ROOT,
        "%.2f s with its proof, gap %d, %d arcs, %d served",
        seconds[ROUNDS / 2],
        found.proof().gap(),
        network.arcs(),
        found.given().size());
  }

  private static void say(String form, Object... values) {
    System.out.println(String.format(Locale.ROOT, form, values));
  }
}
