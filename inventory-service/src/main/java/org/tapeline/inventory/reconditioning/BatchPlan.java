package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which due helmets go to the reconditioner now, and which wait, so that at each place and in all
 * enough of each size stay usable.
 *
 * <p>What is sent is back after the turnaround, so only while it is away can there be too few, and
 * then on the last day most of all, since certifications only end. So a helmet counts when it can
 * be worn through that day. The sets of helmets that can be spared form a laminar matroid (a place
 * lies within the whole, each with its own surplus), on which taking them one by one, the first to
 * lapse first, finds the best set: most helmets, and of those the most pressing (Rado, Edmonds;
 * from memory). A test compares it with all sets on small cases.
 *
 * @param backOn when what goes today is back
 * @param seasonEnd the last day of the season that is asked about
 * @param inSeason whether what goes today would miss some of that season
 */
public record BatchPlan(
    LocalDate today,
    LocalDate backOn,
    LocalDate seasonEnd,
    boolean inSeason,
    List<Step> steps,
    List<Shelf> shelves) {

  /** What becomes of a due helmet now. */
  public enum Way {
    GOES,
    WAITS,
    RETIRE
  }

  /** A due helmet with what becomes of it, and why in a sentence. */
  public record Step(Standing standing, Way way, String why) {
    public boolean goes() {
      return way == Way.GOES;
    }
  }

  /**
   * What a size has.
   *
   * @param place empty for all places together
   * @param usable can be worn until what goes today is back
   * @param need empty when it is not known
   * @param goes of the usable ones
   */
  public record Shelf(
      FleetHelmet.Kind kind, Optional<String> place, int usable, Optional<Integer> need, int goes) {

    public int stays() {
      return usable - goes;
    }

    /** Fewer stay than are needed; sending never makes that so, it was so before. */
    public boolean isShort() {
      return need.filter(n -> n > stays()).isPresent();
    }
  }

  /** Plans for helmets as they stand on that day. */
  public static BatchPlan of(
      LocalDate today, List<Standing> fleet, Needs needs, ReconditioningPolicy policy) {
    LocalDate back = policy.backOn(today);
    LocalDate end = policy.season().endFrom(today);
    boolean inSeason = back.isAfter(policy.season().startFrom(today));
    Spare spare = Spare.of(fleet, needs, back.minusDays(1));
    PlanWords words = new PlanWords(today, back, end, policy.season().startFrom(today));
    List<Step> steps = new ArrayList<>();
    fleet.stream()
        .filter(Standing::isDue)
        .filter(s -> !s.helmet().state().equals("at-reconditioner"))
        .sorted(
            Comparator.comparing(Standing::wearableThrough).thenComparing(s -> s.helmet().tag()))
        .forEach(s -> steps.add(step(s, spare, inSeason, words)));
    return new BatchPlan(today, back, end, inSeason, List.copyOf(steps), spare.shelves());
  }

  private static Step step(Standing s, Spare spare, boolean inSeason, PlanWords words) {
    if (s.lastAgeThrough().isBefore(words.backOn())) {
      return new Step(s, Way.RETIRE, words.tooOld(s));
    }
    return switch (s.helmet().state()) {
      case "issued" -> new Step(s, Way.WAITS, words.worn(s));
      case "reserved" -> new Step(s, Way.WAITS, words.kept());
      case "held" -> new Step(s, Way.WAITS, words.onHold());
      default -> onTheShelf(s, spare, inSeason, words);
    };
  }

  private static Step onTheShelf(Standing s, Spare spare, boolean inSeason, PlanWords words) {
    if (!s.usableThrough(words.backOn().minusDays(1))) {
      return new Step(s, Way.GOES, words.noHelp(s));
    }
    if (!inSeason) {
      spare.send(s.helmet());
      return new Step(s, Way.GOES, words.offSeason());
    }
    if (!s.wearableThrough().isBefore(words.seasonEnd())) {
      return new Step(s, Way.WAITS, words.lastsTheSeason());
    }
    Optional<Shelf> needed = spare.neededAt(s.helmet());
    if (needed.isPresent()) {
      return new Step(s, Way.WAITS, words.needed(s, needed.get()));
    }
    spare.send(s.helmet());
    return new Step(s, Way.GOES, words.spared(spare.shelf(s.helmet())));
  }

  public List<Step> going() {
    return steps.stream().filter(Step::goes).toList();
  }

  public List<Step> waiting() {
    return steps.stream().filter(s -> !s.goes()).toList();
  }
}
