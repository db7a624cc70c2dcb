package org.tapeline.fitting.evidence;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.signoff.SignOffEvent;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;

/**
 * A sign-off of a player from beginning to end, as the sign-off's own events tell.
 *
 * @param end when and why it ended; empty while nothing ended it
 */
public record PastSignOff(
    UUID session,
    String tag,
    String model,
    String size,
    String fitter,
    String field,
    Instant at,
    Optional<End> end) {

  /** A newer sign-off takes the place of the one before it. */
  public static final String FITTED_AGAIN = "fitted-again";

  /**
   * The end of a sign-off.
   *
   * @param why code of the reason
   */
  public record End(Instant at, String why) {}

  /** All sign-offs of a player, oldest first. */
  public static List<PastSignOff> of(List<SignOffEvent> history) {
    List<PastSignOff> all = new ArrayList<>();
    for (SignOffEvent event : history) {
      switch (event) {
        case SignedOff e -> {
          end(all, new End(e.at(), FITTED_AGAIN));
          all.add(begun(e));
        }
        case SignOffWithdrawn e -> end(all, new End(e.at(), e.why()));
        case SignOffLapsed e -> end(all, new End(e.at(), e.why()));
      }
    }
    return List.copyOf(all);
  }

  private static PastSignOff begun(SignedOff e) {
    return new PastSignOff(
        e.session(), e.tag(), e.model(), e.size(), e.fitter(), e.field(), e.at(), Optional.empty());
  }

  private static void end(List<PastSignOff> all, End end) {
    if (all.isEmpty() || all.getLast().end().isPresent()) {
      return;
    }
    PastSignOff s = all.removeLast();
    all.add(
        new PastSignOff(
            s.session, s.tag, s.model, s.size, s.fitter, s.field, s.at, Optional.of(end)));
  }

  /** Why it ended, in words; empty while nothing ended it. */
  public String endSaid() {
    return end.map(e -> said(e.why())).orElse("");
  }

  private static String said(String why) {
    return switch (why) {
      case FITTED_AGAIN -> "fitted again";
      case "fit-failed" -> "a fit check failed";
      case "damage" -> "damage was found on the helmet";
      case "hold" -> "the helmet was put on hold";
      case "issue-refused" -> "the helmet could not be issued to the player";
      case "retired" -> "the helmet was retired";
      case "handed-on" -> "the helmet was fitted to another player";
      case "suspected-concussion" -> "out of play: a licensed professional decides the return";
      default -> why.replace('-', ' ');
    };
  }
}
