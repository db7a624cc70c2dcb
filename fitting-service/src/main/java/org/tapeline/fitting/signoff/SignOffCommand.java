package org.tapeline.fitting.signoff;

import java.time.Instant;
import java.util.UUID;
import org.tapeline.fitting.signoff.SignOffEvent.Conditions;

/** What is to happen to a player's sign-off. */
public sealed interface SignOffCommand {

  /** A fit session was passed: it is the sign-off. */
  record SignOffPlayer(
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
      implements SignOffCommand {}

  /** The helmet, whichever it is, must not be worn. */
  record Withdraw(String why, Instant at) implements SignOffCommand {}

  /** That helmet must not be worn by this player; another one is not meant. */
  record WithdrawHelmet(String tag, String why, Instant at) implements SignOffCommand {}

  /** The sign-off of that session has lapsed; a newer one is not meant. */
  record Lapse(UUID session, String why, Instant at) implements SignOffCommand {}

  /** The sign-off of that session cannot be; a newer one is not meant. */
  record WithdrawSession(UUID session, String why, Instant at) implements SignOffCommand {}
}
