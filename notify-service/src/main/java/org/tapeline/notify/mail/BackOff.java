package org.tapeline.notify.mail;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How long to wait between tries.
 *
 * @param waits after the first, second ... try; the last one repeats; at least one, none negative
 * @param giveUpAfter from when it was raised; a try that would come later is not made
 */
public record BackOff(List<Duration> waits, Duration giveUpAfter) {

  public BackOff {
    waits = List.copyOf(waits);
    if (waits.isEmpty() || waits.stream().anyMatch(Duration::isNegative)) {
      throw new IllegalArgumentException("Back-off needs at least one wait, none negative");
    }
  }

  /**
   * @param attempt the try that failed, from 1
   * @return when to try next; empty when it is to be given up
   */
  public Optional<Instant> next(int attempt, Instant raisedAt, Instant now) {
    Instant next = now.plus(waits.get(Math.min(attempt, waits.size()) - 1));
    return next.isAfter(raisedAt.plus(giveUpAfter)) ? Optional.empty() : Optional.of(next);
  }
}
