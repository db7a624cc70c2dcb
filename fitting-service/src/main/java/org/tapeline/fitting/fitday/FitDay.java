package org.tapeline.fitting.fitday;

import java.util.Optional;

/**
 * A fit day as its events tell.
 *
 * @param opening where and when; empty before it was announced
 */
public record FitDay(Status status, Optional<Opening> opening) {

  /** Where the day stands. */
  public enum Status {
    NOT_ANNOUNCED,
    ANNOUNCED,
    CANCELLED
  }

  public static final FitDay NONE = new FitDay(Status.NOT_ANNOUNCED, Optional.empty());
}
