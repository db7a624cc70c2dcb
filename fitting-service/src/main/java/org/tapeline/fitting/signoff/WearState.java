package org.tapeline.fitting.signoff;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Whether a player may take the field.
 *
 * @param code may-wear, check-today, do-not-wear or unknown: also the class on the page
 * @param said the state in words
 * @param reason why, in words; empty for "may wear"
 */
public record WearState(String code, String said, String reason) {

  /** Weekly re-check (design of the re-check plan; the published guidance is a weekly look). */
  static final Duration CHECK_DUE_AFTER = Duration.ofDays(7);

  /** Cautious default: three days of grace, then the sign-off no longer counts. */
  static final Duration LAPSED_AFTER = Duration.ofDays(10);

  /** What is known of a sign-off and its helmet. */
  public record Facts(
      Optional<String> state,
      Optional<String> why,
      Instant at,
      boolean helmetInService,
      boolean helmetWithSomebodyElse) {}

  /** Only a sign-off that holds, on a helmet that is in service, is "may wear". */
  public static WearState of(Optional<Facts> facts, Instant now) {
    if (facts.isEmpty() || facts.get().state().isEmpty()) {
      return doNot("Not fitted yet");
    }
    Facts f = facts.get();
    String state = f.state().get();
    if (state.equals("withdrawn")) {
      return doNot(reason(f.why().orElse("")));
    }
    if (state.equals("lapsed")) {
      return doNot("The sign-off has lapsed");
    }
    if (!f.helmetInService()) {
      return doNot("The helmet is not in service");
    }
    if (f.helmetWithSomebodyElse()) {
      return doNot("By the records another player has this helmet");
    }
    Duration age = Duration.between(f.at(), now);
    if (age.compareTo(LAPSED_AFTER) > 0) {
      return doNot("The weekly check is overdue: the sign-off has lapsed");
    }
    return age.compareTo(CHECK_DUE_AFTER) > 0
        ? new WearState("check-today", "Check today", "The weekly check is due")
        : new WearState("may-wear", "May wear", "");
  }

  /** Nothing that is older than it should be is passed on as the truth. */
  public static WearState notKnown(Optional<String> since) {
    return new WearState(
        "unknown",
        "Not known",
        since.map(s -> "Not known since " + s).orElse("Not known yet: the service is starting"));
  }

  private static WearState doNot(String reason) {
    return new WearState("do-not-wear", "Do not wear", reason);
  }

  private static String reason(String why) {
    return switch (why) {
      case "fit-failed" -> "The fit check failed";
      case "damage" -> "The helmet is damaged and in quarantine";
      case "hold" -> "The helmet is on hold";
      case "issue-refused" -> "The helmet could not be issued to this player";
      case "retired" -> "The helmet is retired";
      case "suspected-concussion" -> "Out of play: a licensed professional decides the return";
      default -> "The sign-off was withdrawn";
    };
  }
}
