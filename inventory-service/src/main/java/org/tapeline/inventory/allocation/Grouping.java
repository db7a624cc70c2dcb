package org.tapeline.inventory.allocation;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Players who are alike, and helmets that are alike: who of them gets which makes no difference to
 * the cost, so that the flow need only say how many.
 *
 * @param shelves helmets of one kind at one place, in the order in which they are taken: first
 *     those that cost less
 * @param lines players of one field who accept the same and have the same rank, in the order in
 *     which they are served: first who has waited longest
 */
record Grouping(List<Shelf> shelves, List<Line> lines) {

  /** Helmets that stand together. */
  record Shelf(Kind kind, String place, List<FreeHelmet> helmets) {}

  /** Players who stand in one line. */
  record Line(String field, int rank, List<Seeker.Acceptable> accepts, List<Seeker> seekers) {}

  private record ShelfKey(Kind kind, String place) {}

  private record LineKey(String field, int rank, List<Seeker.Acceptable> accepts) {}

  static Grouping of(Situation situation, AllocationPolicy policy) {
    return new Grouping(shelves(situation, policy), lines(situation, policy));
  }

  private static List<Shelf> shelves(Situation situation, AllocationPolicy policy) {
    Comparator<ShelfKey> order =
        Comparator.comparing(ShelfKey::kind).thenComparing(ShelfKey::place);
    Comparator<FreeHelmet> taken =
        Comparator.comparingInt((FreeHelmet h) -> policy.ofDaysLeft(h.daysLeft()))
            .thenComparing(FreeHelmet::daysLeft, Comparator.reverseOrder())
            .thenComparing(FreeHelmet::tag);
    Map<ShelfKey, List<FreeHelmet>> shelves =
        situation.helmets().stream()
            .sorted(taken)
            .collect(
                Collectors.groupingBy(
                    h -> new ShelfKey(h.kind(), h.place()),
                    () -> new TreeMap<>(order),
                    Collectors.toList()));
    return shelves.entrySet().stream()
        .map(e -> new Shelf(e.getKey().kind(), e.getKey().place(), e.getValue()))
        .toList();
  }

  private static List<Line> lines(Situation situation, AllocationPolicy policy) {
    Comparator<LineKey> order =
        Comparator.comparingInt((LineKey k) -> -k.rank())
            .thenComparing(LineKey::field)
            .thenComparing(k -> k.accepts().toString());
    Comparator<Seeker> served =
        Comparator.comparing(Seeker::waitingSince).thenComparing(Seeker::player);
    Map<LineKey, List<Seeker>> lines =
        situation.seekers().stream()
            .sorted(served)
            .collect(
                Collectors.groupingBy(
                    s -> new LineKey(s.field(), rank(s, situation, policy), s.accepts()),
                    () -> new TreeMap<>(order),
                    Collectors.toList()));
    return lines.entrySet().stream()
        .map(
            e ->
                new Line(e.getKey().field(), e.getKey().rank(), e.getKey().accepts(), e.getValue()))
        .toList();
  }

  static int rank(Seeker seeker, Situation situation, AllocationPolicy policy) {
    long days = Duration.between(seeker.waitingSince(), situation.now()).toDays();
    return policy.rank(seeker.mustNotWear(), days);
  }
}
