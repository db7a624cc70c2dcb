package org.tapeline.fitting.signoff;

import java.time.Instant;
import java.util.UUID;

/** What happens to the sign-off of a player. */
public sealed interface SignOffEvent {
  UUID player();

  /** The player may wear that very helmet. */
  record SignedOff(
      UUID player,
      UUID session,
      String tag,
      String model,
      String size,
      String field,
      String fitter,
      Instant at)
      implements SignOffEvent {}

  /** The player must not wear it. */
  record SignOffWithdrawn(UUID player, String tag, String why, Instant at)
      implements SignOffEvent {}

  /** A re-check was overdue for too long, or the helmet went out of certification. */
  record SignOffLapsed(UUID player, String tag, String why, Instant at) implements SignOffEvent {}
}
