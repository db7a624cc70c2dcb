package org.tapeline.notify.wish;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * How and when a person wants to be written to.
 *
 * @param channels in the person's order; empty for the association's
 * @param quiet hours without news that can wait
 * @param zone empty for that of the player's field
 */
public record Wish(List<String> channels, Optional<Quiet> quiet, Optional<ZoneId> zone) {
  public static final Wish NONE = new Wish(List.of(), Optional.empty(), Optional.empty());

  /** From a time of the day to another one. */
  public record Quiet(LocalTime from, LocalTime to) {}

  public Wish {
    channels = List.copyOf(channels);
  }
}
