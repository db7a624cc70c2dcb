package org.tapeline.fitting.signoff;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * The sign-off of a player as its events tell.
 *
 * @param live the sign-off that holds; empty when there is none or it was taken back
 */
public record SignOff(Optional<Live> live) {

  /** A sign-off that was not taken back. */
  public record Live(
      UUID player, UUID session, String tag, String model, String size, Instant at) {}

  /** The words by which the newest event on a sign-off is kept. */
  public static final String SIGNED_OFF = "signed-off";

  public static final String WITHDRAWN = "withdrawn";
  public static final String LAPSED = "lapsed";

  public static final SignOff NONE = new SignOff(Optional.empty());
}
