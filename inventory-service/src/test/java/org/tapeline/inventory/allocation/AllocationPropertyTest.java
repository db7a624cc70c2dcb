package org.tapeline.inventory.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.tapeline.inventory.allocation.AllocationPolicy.Band;
import org.tapeline.inventory.allocation.AllocationPolicy.Minutes;
import org.tapeline.inventory.allocation.Allotment.Given;

@Label("Helmets handed to many players at once")
class AllocationPropertyTest {
  private static final FlowSolver SOLVER = new LeastCostFlow();

  static AllocationPolicy policy(int spares) {
    return new AllocationPolicy(
        1,
        "made up",
        new Minutes(15, 60, 30, 10, 120),
        List.of(new Band(30, 100), new Band(120, 20)),
        List.of(7, 21),
        spares,
        0.1,
        21);
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  @Label("go as well as in the best of all plans that there are")
  void asGoodAsTryingAll(@ForAll Random random) {
    int players = 1 + random.nextInt(4);
    Situation s = new Situations(2, players, random.nextInt(5), 2).by(random);
    AllocationPolicy policy = policy(random.nextInt(3));
    Allotment found = Allocation.of(s, policy, SOLVER);
    EveryPlan.Best best = EveryPlan.best(s, policy);
    assertThat(ranks(found, s, policy)).isEqualTo(best.left());
    assertThat(found.minutes()).isEqualTo(best.minutes());
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  @Label("go as well in groups as one by one")
  void groupsLoseNothing(@ForAll Random random) {
    Situation s = new Situations(3, 1 + random.nextInt(25), random.nextInt(25), 2).by(random);
    AllocationPolicy policy = policy(0);
    assertThat(Allocation.of(s, policy, SOLVER).proof().cost())
        .isEqualTo(OneByOne.leastCost(s, policy, SOLVER));
  }

  @Property(tries = 100, shrinking = ShrinkingMode.OFF)
  @Label("never go to two players, and are always of a kind that the player accepts")
  void holds(@ForAll Random random) {
    Situation s = new Situations(5, random.nextInt(120), random.nextInt(120), 4).by(random);
    Allotment found = Allocation.of(s, policy(1), SOLVER);
    Set<String> tags = new HashSet<>();
    for (Given given : found.given()) {
      assertThat(tags.add(given.helmet().tag())).isTrue();
      assertThat(given.seeker().accepts())
          .contains(new Seeker.Acceptable(given.helmet().kind(), given.liking()));
    }
    assertThat(found.given().size() + found.left().size()).isEqualTo(s.seekers().size());
    assertThat(found.proof().proved()).isTrue();
    for (Seeker left : found.left()) {
      assertThat(s.helmets())
          .noneMatch(
              h ->
                  !tags.contains(h.tag())
                      && left.accepts().stream().anyMatch(a -> a.kind().equals(h.kind())));
    }
  }

  static List<Integer> ranks(Allotment found, Situation s, AllocationPolicy policy) {
    return found.left().stream()
        .map(seeker -> Grouping.rank(seeker, s, policy))
        .sorted(Comparator.reverseOrder())
        .toList();
  }
}
