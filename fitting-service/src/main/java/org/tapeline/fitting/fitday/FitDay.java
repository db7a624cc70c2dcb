package org.tapeline.fitting.fitday;

import java.time.Instant;

/**
 * A fit day as its events tell.
 *
 * @param endsAt when it is over; {@code null} before it was announced
 */
public record FitDay(Status status, Instant endsAt) {

  /** Where the day stands. */
  public enum Status {
    NOT_ANNOUNCED,
    ANNOUNCED,
    CANCELLED
  }

  public static final FitDay NONE = new FitDay(Status.NOT_ANNOUNCED, null);
}
