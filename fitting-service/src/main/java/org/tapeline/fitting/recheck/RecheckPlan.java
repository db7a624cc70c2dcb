package org.tapeline.fitting.recheck;

import java.time.Duration;
import java.time.Instant;

/**
 * How long a sign-off holds before the fit is looked at again. Data: an association may be
 * stricter.
 *
 * @param dueAfterDays from then on "check today"; days of 24 hours since the sign-off, 1 to 31
 * @param lapsedAfterDays from then on "do not wear"; more than {@code dueAfterDays}
 * @param source where the figures are from
 */
public record RecheckPlan(
    String id, int version, int dueAfterDays, int lapsedAfterDays, String source) {

  /**
   * @throws IllegalArgumentException for a plan by which a sign-off would hold for ever
   */
  public RecheckPlan {
    if (dueAfterDays < 1 || dueAfterDays > 31) {
      throw new IllegalArgumentException("A re-check is due after 1 to 31 days");
    }
    if (lapsedAfterDays <= dueAfterDays || lapsedAfterDays > 62) {
      throw new IllegalArgumentException("A sign-off lapses after it is due, within 62 days");
    }
  }

  public Instant dueAt(Instant signedOff) {
    return signedOff.plus(Duration.ofDays(dueAfterDays));
  }

  public Instant lapsesAt(Instant signedOff) {
    return signedOff.plus(Duration.ofDays(lapsedAfterDays));
  }
}
