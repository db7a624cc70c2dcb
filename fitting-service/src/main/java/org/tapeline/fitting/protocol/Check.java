package org.tapeline.fitting.protocol;

import java.util.List;
import java.util.Optional;

/**
 * One thing to look at.
 *
 * @param question what to look at
 * @param how how to do it, short
 * @param pass what the passing answer is
 * @param axis what it is about: front-back, sides, crown-height, jaw-left, jaw-right, chin-strap or
 *     hardware
 * @param source where the check is from, or {@code common practice}
 * @param ways in which it can fail, the most frequent first; never empty
 * @param measure the length that decides it, for a check that can be measured
 */
public record Check(
    String id,
    String question,
    String how,
    String pass,
    String axis,
    Severity severity,
    String source,
    List<Way> ways,
    Optional<Measure> measure) {

  /** What a failed check means. */
  public enum Severity {
    /** The helmet itself is at fault: looking again does not mend it, a remedy may. */
    UNSAFE_HELMET,
    /** The helmet does not fit this head as it is. */
    POOR_FIT
  }

  /**
   * A way in which the check fails.
   *
   * @param finding loose, tight, high, low, damaged, slips or other
   * @param said the finding in words, for the button
   * @param remedies what to try, in order
   * @param otherwise what a re-fit needs when nothing helps
   */
  public record Way(String finding, String said, List<Remedy> remedies, Otherwise otherwise) {}

  public Check {
    ways = List.copyOf(ways);
  }

  /** Remedies for a finding in order; for one that this check does not name, all of them. */
  public List<Remedy> remedies(String finding) {
    Optional<Way> way = way(finding);
    return way.isPresent()
        ? way.get().remedies()
        : ways.stream().flatMap(w -> w.remedies().stream()).distinct().toList();
  }

  /** What the re-fit needs; for a finding that this check does not name, as for its usual one. */
  public Otherwise otherwise(String finding) {
    return way(finding).orElse(ways.getFirst()).otherwise();
  }

  public Optional<Remedy> remedy(String id) {
    return ways.stream()
        .flatMap(w -> w.remedies().stream())
        .filter(r -> r.id().equals(id))
        .findFirst();
  }

  public Optional<Way> way(String finding) {
    return ways.stream().filter(w -> w.finding().equals(finding)).findFirst();
  }

  /** Looking again is not enough: the failed answer stands until a remedy was applied. */
  public boolean standsUntilMended() {
    return severity == Severity.UNSAFE_HELMET;
  }
}
