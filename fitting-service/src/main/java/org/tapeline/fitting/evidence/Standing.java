package org.tapeline.fitting.evidence;

import java.time.Instant;
import java.util.Optional;
import org.tapeline.fitting.signoff.WearState;

/** Whether a sign-off holds at this moment. What is not known is never said to hold. */
public sealed interface Standing {

  /** It holds; {@code checkDue} when the fit has to be looked at today. */
  record Holds(boolean checkDue) implements Standing {}

  /** An event ended it. */
  record Ended(Instant at, String why) implements Standing {}

  /** No event ended it, but something that is known of the helmet or the date stands against it. */
  record DoesNotHold(String reason) implements Standing {}

  /** It cannot be told now; {@code reason} says since when. */
  record NotKnown(String reason) implements Standing {}

  /**
   * @param signOff as its events tell; empty when there is none of that session
   * @param wear whether the player may wear the helmet of the newest sign-off; empty when the
   *     player is not known here
   */
  static Standing of(Optional<PastSignOff> signOff, Optional<WearState> wear) {
    if (signOff.isEmpty() || wear.isEmpty() && signOff.get().end().isEmpty()) {
      return new NotKnown("Not known: the player is not on record here");
    }
    Optional<PastSignOff.End> end = signOff.get().end();
    if (end.isPresent()) {
      return new Ended(end.get().at(), signOff.get().endSaid());
    }
    WearState now = wear.get();
    return switch (now.code()) {
      case "may-wear" -> new Holds(false);
      case "check-today" -> new Holds(true);
      case "do-not-wear" -> new DoesNotHold(now.reason());
      default -> new NotKnown(now.reason());
    };
  }
}
