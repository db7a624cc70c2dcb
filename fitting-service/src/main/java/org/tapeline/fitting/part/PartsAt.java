package org.tapeline.fitting.part;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Pieces of each part at a place by the records; what was never counted there is not named. */
public final class PartsAt {
  private PartsAt() {}

  /** What is there for any helmet, by item, whatever its model. */
  public static Map<String, Integer> place(String place) {
    return of(PartCount.list("place", place), PartMove.list("place", place));
  }

  /**
   * What is there for a helmet of that model: a use does not say for which model it was, and is
   * taken off in any case.
   */
  public static Map<String, Integer> place(String place, String model) {
    return of(
        PartCount.list("place = ?1 and model in ('', ?2)", place, model),
        PartMove.list("place", place));
  }

  static Map<String, Integer> of(List<PartCount> counts, List<PartMove> moves) {
    Map<String, Integer> pieces = new TreeMap<>();
    for (PartCount count : counts) {
      pieces.merge(count.item, count.counted, Integer::sum);
    }
    for (PartMove move : moves) {
      boolean since =
          counts.stream()
              .filter(c -> c.item.equals(move.item))
              .allMatch(c -> move.at.isAfter(c.at));
      if (since) {
        pieces.merge(move.item, move.pieces, Integer::sum);
      }
    }
    pieces.replaceAll((item, there) -> Math.max(0, there));
    return pieces;
  }
}
