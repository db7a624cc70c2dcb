package org.tapeline.inventory.reconditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.reconditioning.SomeHelmets.AUGUST;
import static org.tapeline.inventory.reconditioning.SomeHelmets.POLICY;
import static org.tapeline.inventory.reconditioning.SomeHelmets.SMALL;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.tapeline.inventory.reconditioning.Needs.At;

@Label("A plan for the reconditioner, against all sets of helmets")
class BatchPlanPropertyTest {
  private static final List<String> PLACES = List.of("DEPOT", "NORTH", "RIVER");
  private static final LocalDate BACK = POLICY.backOn(AUGUST);

  @Property(tries = 300)
  @Label("sends as many of the most pressing helmets as any set that leaves enough")
  void best(@ForAll @IntRange(min = 1, max = 11) int size, @ForAll @LongRange long seed) {
    Random random = new Random(seed);
    List<Standing> fleet = fleet(random, size);
    Needs needs = needs(random);
    List<Standing> free =
        fleet.stream()
            .filter(s -> s.isDue() && usable(s))
            .filter(s -> s.wearableThrough().isBefore(LocalDate.of(2026, 11, 15)))
            .toList();
    long best = 0;
    for (int set = 0; set < 1 << free.size(); set++) {
      int chosen = set;
      List<Standing> gone = new ArrayList<>();
      for (int i = 0; i < free.size(); i++) {
        if ((chosen >> i & 1) == 1) {
          gone.add(free.get(i));
        }
      }
      if (leavesEnough(fleet, gone, needs)) {
        best = Math.max(best, weight(gone));
      }
    }
    List<Standing> sent =
        BatchPlan.of(AUGUST, fleet, needs, POLICY).going().stream()
            .map(BatchPlan.Step::standing)
            .filter(BatchPlanPropertyTest::usable)
            .toList();
    assertThat(leavesEnough(fleet, sent, needs)).isTrue();
    assertThat(weight(sent)).isEqualTo(best);
  }

  private static List<Standing> fleet(Random random, int size) {
    List<Standing> fleet = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      String place = PLACES.get(random.nextInt(3));
      LocalDate through = AUGUST.plusDays(random.nextInt(120));
      fleet.add(
          random.nextInt(4) == 0
              ? SomeHelmets.notDue("N" + i, place)
              : SomeHelmets.due("D" + i, place, through));
    }
    return fleet;
  }

  private static Needs needs(Random random) {
    Map<At, Integer> there = new HashMap<>();
    PLACES.forEach(p -> there.put(new At(SMALL, p), random.nextInt(4)));
    return new Needs(Map.of(SMALL, random.nextInt(9)), there);
  }

  private static boolean usable(Standing s) {
    return !s.wearableThrough().isBefore(BACK.minusDays(1));
  }

  /** Many first, then those that lapse soon. */
  private static long weight(List<Standing> gone) {
    return gone.stream()
        .mapToLong(s -> 1000 - ChronoUnit.DAYS.between(AUGUST, s.wearableThrough()))
        .sum();
  }

  /** A place that has too few already may lose none of them. */
  private static boolean leavesEnough(List<Standing> fleet, List<Standing> gone, Needs needs) {
    Set<String> left = gone.stream().map(s -> s.helmet().tag()).collect(Collectors.toSet());
    boolean places =
        PLACES.stream()
            .allMatch(
                p -> enough(fleet, left, s -> s.helmet().place().equals(p), needs.at(SMALL, p)));
    return places && enough(fleet, left, s -> true, needs.inAll(SMALL).orElseThrow());
  }

  private static boolean enough(
      List<Standing> fleet, Set<String> gone, Predicate<Standing> where, int need) {
    List<Standing> there =
        fleet.stream().filter(where).filter(BatchPlanPropertyTest::usable).toList();
    long lost = there.stream().filter(s -> gone.contains(s.helmet().tag())).count();
    return lost == 0 || there.size() - lost >= need;
  }
}
