package org.tapeline.fitting.fitday;

import java.util.Map;
import java.util.TreeMap;

/**
 * How long fit checks took.
 *
 * @param byMinutes number of checks by length, rounded up to 5 minutes
 */
record FitLengths(TreeMap<Integer, Long> byMinutes) {
  static final FitLengths NONE = of(Map.of());

  static FitLengths of(Map<Integer, Long> byMinutes) {
    return new FitLengths(new TreeMap<>(byMinutes));
  }

  long count() {
    return sum(byMinutes);
  }

  /** How many took no longer than that. */
  long within(int minutes) {
    return sum(byMinutes.headMap(minutes, true));
  }

  private static long sum(Map<Integer, Long> counts) {
    return counts.values().stream().mapToLong(Long::longValue).sum();
  }
}
