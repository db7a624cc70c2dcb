package org.tapeline.fitting.session;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * When something was done, for what a phone took down without signal and sends later.
 *
 * <p>A phone's clock may be wrong. A moment that lies ahead would make a sign-off hold too long,
 * one that is too far back is no clock at all: for both the moment of arrival counts.
 */
final class EnteredAt {
  /** A weekend away from any signal. */
  static final Duration OLDEST = Duration.ofHours(72);

  private EnteredAt() {}

  static Instant of(Optional<Instant> entered, Instant arrived) {
    return entered
        .filter(at -> !at.isAfter(arrived) && !at.isBefore(arrived.minus(OLDEST)))
        .orElse(arrived);
  }
}
