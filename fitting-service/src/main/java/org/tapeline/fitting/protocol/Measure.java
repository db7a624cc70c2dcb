package org.tapeline.fitting.protocol;

import java.util.Optional;

/**
 * A length that decides a check, where the fitter takes one.
 *
 * @param what what is measured, in words
 * @param leastMm the least that passes, millimetres
 * @param mostMm the most that passes, millimetres; empty for no such end
 * @param under the finding when it is less
 * @param over the finding when it is more; present with {@code mostMm}
 * @param source where the limits are from
 */
public record Measure(
    String what,
    double leastMm,
    Optional<Double> mostMm,
    String under,
    Optional<String> over,
    String source) {

  /**
   * @throws IllegalArgumentException for limits that let everything or nothing pass
   */
  public Measure {
    if (!(leastMm > 0 && leastMm < 500) || mostMm.filter(most -> !(most > leastMm)).isPresent()) {
      throw new IllegalArgumentException("A measure passes from a least to a larger most length");
    }
    if (mostMm.isPresent() != over.isPresent()) {
      throw new IllegalArgumentException("A most length goes with the finding for more than that");
    }
  }

  /** The finding that a length means; empty when it passes. */
  public Optional<String> finding(double mm) {
    if (mm < leastMm) {
      return Optional.of(under);
    }
    return mostMm.filter(most -> mm > most).isPresent() ? over : Optional.empty();
  }

  /** The limits in words. */
  public String said() {
    return mostMm
        .map(most -> number(leastMm) + " to " + number(most) + " mm")
        .orElse("at least " + number(leastMm) + " mm");
  }

  private static String number(double mm) {
    return mm == Math.rint(mm) ? String.valueOf((long) mm) : String.valueOf(mm);
  }
}
