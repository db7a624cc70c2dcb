package org.tapeline.journal;

import java.time.Instant;
import java.util.Optional;

/** How old the picture is that this service has of its peers. */
@FunctionalInterface
public interface Freshness {

  /**
   * The last moment up to which everything that the peers had committed had been applied here;
   * empty when that has not been so since this process started. It stands still when the broker
   * cannot be asked and when a peer's relay is silent: what cannot be checked is not fresh. Both
   * ends of the comparison are clocks of machines, which must agree to a second or so.
   */
  Optional<Instant> caughtUpAt();
}
