package org.tapeline.notify.wish;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * How and when a person wants to be written to.
 *
 * @param recipient the guardian's id
 * @param channels in the person's order; empty for the association's
 * @param quietFrom such as {@code 21:00}; {@code null} without quiet hours
 * @param quietTo such as {@code 07:00}
 * @param zone such as {@code America/Denver}; {@code null} for that of the player's field
 * @param by {@code guardian} or {@code staff}
 */
public record WishesSet(
    UUID recipient,
    List<String> channels,
    String quietFrom,
    String quietTo,
    String zone,
    String by,
    Instant at) {

  public WishesSet {
    channels = List.copyOf(channels);
  }
}
