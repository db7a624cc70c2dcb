package org.tapeline.proof.faults.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What does not hold, with the evidence, and how much was looked at. */
public final class Findings {
  /** In which way something does not hold. */
  public enum Sort {
    LOST,
    DOUBLED,
    DIFFERING
  }

  /**
   * One thing that does not hold.
   *
   * @param check who found it
   * @param evidence which command, event or row, and where
   */
  public record Finding(Sort sort, String check, String evidence) {}

  private final List<Finding> all = new ArrayList<>();
  private final Map<String, Long> looked = new TreeMap<>();

  public void lost(String check, String evidence) {
    all.add(new Finding(Sort.LOST, check, evidence));
  }

  public void doubled(String check, String evidence) {
    all.add(new Finding(Sort.DOUBLED, check, evidence));
  }

  public void differing(String check, String evidence) {
    all.add(new Finding(Sort.DIFFERING, check, evidence));
  }

  /** Differing unless the two are equal. */
  void same(String check, String what, Object expected, Object found) {
    if (!expected.equals(found)) {
      differing(check, what + ": should be " + expected + ", is " + found);
    }
  }

  /** That so many things were compared, so that nothing compared is not taken for nothing found. */
  public void looked(String what, long howMany) {
    looked.merge(what, howMany, Long::sum);
  }

  public List<Finding> all() {
    return List.copyOf(all);
  }

  public Map<String, Long> looked() {
    return new TreeMap<>(looked);
  }

  /** Such as {@code lost 0, doubled 0, differing 0}. */
  public String line() {
    Map<Sort, Long> counts = new EnumMap<>(Sort.class);
    all.forEach(finding -> counts.merge(finding.sort(), 1L, Long::sum));
    return Arrays.stream(Sort.values())
        .map(s -> s.name().toLowerCase(Locale.ROOT) + " " + counts.getOrDefault(s, 0L))
        .collect(Collectors.joining(", "));
  }
}
