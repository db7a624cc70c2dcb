package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What is read of fitting's events about sign-offs and re-checks. */
public final class FitWords {
  private FitWords() {}

  /** {@code signed-off}: the player may wear the helmet. */
  public record SignedOff(UUID player, Instant at) {}

  /** {@code sign-off-withdrawn}. */
  public record SignOffWithdrawn(UUID player, String why, Instant at) {}

  /** {@code sign-off-lapsed}. */
  public record SignOffLapsed(UUID player, String why, Instant at) {}

  /**
   * {@code recheck-due}.
   *
   * @param lapsesAt from then on the sign-off does not hold without the check
   */
  public record RecheckDue(UUID player, Instant at, Optional<Instant> lapsesAt) {}
}
