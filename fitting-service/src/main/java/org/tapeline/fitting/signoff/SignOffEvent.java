package org.tapeline.fitting.signoff;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What happens to the sign-off of a player. */
public sealed interface SignOffEvent {
  UUID player();

  /**
   * Conditions at the fit, as far as they were noted.
   *
   * @param airCelsius air temperature, degrees Celsius
   * @param altitudeM altitude of the field, metres
   * @param hair usual, short, long or braids
   */
  record Conditions(
      Optional<Double> airCelsius, Optional<Double> altitudeM, Optional<String> hair) {
    public static final Conditions NOT_NOTED =
        new Conditions(Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * The player may wear that very helmet.
   *
   * @param protocol id of the fit protocol by which it was checked; {@code not-stated} in old ones
   * @param protocolVersion its version; 0 in old ones
   */
  record SignedOff(
      UUID player,
      UUID session,
      String tag,
      String model,
      String size,
      String field,
      String fitter,
      Conditions conditions,
      String protocol,
      int protocolVersion,
      Instant at)
      implements SignOffEvent {}

  /** The player must not wear it. */
  record SignOffWithdrawn(UUID player, String tag, String why, Instant at)
      implements SignOffEvent {}

  /** A re-check was overdue for too long, or the helmet went out of certification. */
  record SignOffLapsed(UUID player, String tag, String why, Instant at) implements SignOffEvent {}
}
