package org.tapeline.inventory.allocation;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.inventory.allocation.Seeker.Acceptable;

/** One after the other, each the cheapest helmet that is still there. */
record Greedy(int served, long minutes) {

  static Greedy of(Situation s, AllocationPolicy policy) {
    List<Seeker> inLine =
        s.seekers().stream()
            .sorted(
                Comparator.comparingInt((Seeker seeker) -> -Grouping.rank(seeker, s, policy))
                    .thenComparing(Seeker::waitingSince))
            .toList();
    Set<FreeHelmet> taken = new HashSet<>();
    long minutes = 0;
    for (Seeker seeker : inLine) {
      long least = Long.MAX_VALUE;
      FreeHelmet best = null;
      for (FreeHelmet helmet : s.helmets()) {
        long cost = cost(s, policy, seeker, helmet);
        if (cost < least && !taken.contains(helmet)) {
          least = cost;
          best = helmet;
        }
      }
      if (best != null) {
        taken.add(best);
        minutes += least;
      }
    }
    return new Greedy(taken.size(), minutes);
  }

  private static long cost(Situation s, AllocationPolicy policy, Seeker seeker, FreeHelmet helmet) {
    Optional<Acceptable> accepts =
        seeker.accepts().stream().filter(a -> a.kind().equals(helmet.kind())).findFirst();
    return accepts.map(a -> OneByOne.cost(s, policy, seeker, helmet, a)).orElse(Long.MAX_VALUE);
  }
}
