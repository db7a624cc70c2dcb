package org.tapeline.fitting.signoff;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;

/**
 * The sign-off of a player as its events tell.
 *
 * @param live the sign-off that holds; empty when there is none or it was taken back
 */
public record SignOff(Optional<Live> live) {

  /** A sign-off that was not taken back. */
  public record Live(UUID session, String tag, String model, String size, Instant at) {}

  public static final SignOff NEVER = new SignOff(Optional.empty());

  public static SignOff evolve(SignOff state, SignOffEvent event) {
    return switch (event) {
      case SignedOff e ->
          new SignOff(Optional.of(new Live(e.session(), e.tag(), e.model(), e.size(), e.at())));
      case SignOffWithdrawn e -> NEVER;
      case SignOffLapsed e -> NEVER;
    };
  }
}
