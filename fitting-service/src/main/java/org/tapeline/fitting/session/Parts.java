package org.tapeline.fitting.session;

import java.util.ArrayList;
import java.util.List;

/** The parts in a helmet at a pass. */
final class Parts {
  private Parts() {}

  /**
   * What the adjustments used, plus what the fitter lists beyond that: one and the same part is not
   * counted twice.
   */
  static List<String> fitted(List<String> adjusted, List<String> listed) {
    List<String> beyond = new ArrayList<>(listed);
    adjusted.forEach(beyond::remove);
    List<String> all = new ArrayList<>(adjusted);
    all.addAll(beyond);
    return List.copyOf(all);
  }

  static boolean allCodes(List<String> items) {
    return items.stream().allMatch(item -> item.matches("[a-z0-9][a-z0-9:-]{0,79}"));
  }
}
