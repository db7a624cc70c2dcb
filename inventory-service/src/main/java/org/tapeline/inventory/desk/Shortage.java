package org.tapeline.inventory.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** When something runs out: what is needed by then, against what is there and what comes. */
public record Shortage(LocalDate firstDay, int missing) {

  /** Pieces that are needed from a day on, or that come on a day. */
  public record Dated(LocalDate day, int pieces) {}

  /**
   * The first day on which more is needed than there is, and how much is missing at worst.
   *
   * @param now pieces that are there; below 0 counts as none
   * @param needs of different days, which add up
   * @param arrivals count from the start of their day
   */
  public static Optional<Shortage> of(int now, List<Dated> needs, List<Dated> arrivals) {
    List<LocalDate> days =
        Stream.of(needs, arrivals)
            .flatMap(List::stream)
            .map(Dated::day)
            .distinct()
            .sorted(Comparator.naturalOrder())
            .toList();
    LocalDate first = null;
    int worst = 0;
    for (LocalDate day : days) {
      int missing = until(needs, day) - Math.max(0, now) - until(arrivals, day);
      first = first == null && missing > 0 ? day : first;
      worst = Math.max(worst, missing);
    }
    return first == null ? Optional.empty() : Optional.of(new Shortage(first, worst));
  }

  private static int until(List<Dated> all, LocalDate day) {
    return all.stream().filter(d -> !d.day().isAfter(day)).mapToInt(Dated::pieces).sum();
  }

  /** Both together: the earlier day, the larger number. */
  static Optional<Shortage> worse(Optional<Shortage> one, Optional<Shortage> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    LocalDate a = one.get().firstDay();
    LocalDate b = other.get().firstDay();
    int missing = Math.max(one.get().missing(), other.get().missing());
    return Optional.of(new Shortage(a.isBefore(b) ? a : b, missing));
  }
}
