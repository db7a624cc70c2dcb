package org.tapeline.inventory.allocation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tapeline.inventory.allocation.Seeker.Acceptable;

/** The best of all plans by trying each, for a handful of players. */
final class EveryPlan {
  private final Situation situation;
  private final AllocationPolicy policy;
  private Best best;

  /** The ranks of who is left, the highest first, and the minutes. */
  record Best(List<Integer> left, long minutes) {

    /** Fewer are left; of as many, the lower ones; of the same, for fewer minutes. */
    boolean betterThan(Best other) {
      if (left.size() != other.left.size()) {
        return left.size() < other.left.size();
      }
      for (int i = 0; i < left.size(); i++) {
        int compared = left.get(i).compareTo(other.left.get(i));
        if (compared != 0) {
          return compared < 0;
        }
      }
      return minutes < other.minutes;
    }
  }

  private EveryPlan(Situation situation, AllocationPolicy policy) {
    this.situation = situation;
    this.policy = policy;
  }

  static Best best(Situation situation, AllocationPolicy policy) {
    EveryPlan plans = new EveryPlan(situation, policy);
    plans.tryFrom(0, new HashSet<>(), new ArrayList<>(), 0);
    return plans.best;
  }

  private void tryFrom(int player, Set<FreeHelmet> taken, List<Integer> left, long minutes) {
    if (player == situation.seekers().size()) {
      List<Integer> sorted = new ArrayList<>(left);
      sorted.sort(Collections.reverseOrder());
      Best found = new Best(sorted, minutes + spares(taken));
      if (best == null || found.betterThan(best)) {
        best = found;
      }
      return;
    }
    Seeker seeker = situation.seekers().get(player);
    left.add(Grouping.rank(seeker, situation, policy));
    tryFrom(player + 1, taken, left, minutes);
    left.removeLast();
    for (FreeHelmet helmet : situation.helmets()) {
      Optional<Acceptable> accepts =
          seeker.accepts().stream().filter(a -> a.kind().equals(helmet.kind())).findFirst();
      if (accepts.isPresent() && taken.add(helmet)) {
        long cost = OneByOne.cost(situation, policy, seeker, helmet, accepts.get());
        tryFrom(player + 1, taken, left, minutes + cost);
        taken.remove(helmet);
      }
    }
  }

  private long spares(Set<FreeHelmet> taken) {
    Map<String, Integer> there = count(situation.helmets());
    Map<String, Integer> gone = count(taken);
    long minutes = 0;
    for (Map.Entry<String, Integer> shelf : gone.entrySet()) {
      if (situation.fields().contains(shelf.getKey().split(" ")[0])) {
        int stays = there.get(shelf.getKey()) - shelf.getValue();
        int kept = Math.min(policy.spares(), there.get(shelf.getKey()));
        minutes += (long) Math.max(0, kept - stays) * policy.minutes().spare();
      }
    }
    return minutes;
  }

  private static Map<String, Integer> count(Iterable<FreeHelmet> helmets) {
    Map<String, Integer> counts = new HashMap<>();
    helmets.forEach(h -> counts.merge(h.place() + " " + h.kind(), 1, Integer::sum));
    return counts;
  }
}
