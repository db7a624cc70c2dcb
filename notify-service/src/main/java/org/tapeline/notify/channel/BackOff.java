package org.tapeline.notify.channel;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How long to wait between tries.
 *
 * @param waits after the first, second ... try; the last one repeats; at least one, none negative
 * @param giveUpAfter from when the channel was first tried; a try that would come later is not made
 */
public record BackOff(List<Duration> waits, Duration giveUpAfter) {

  public BackOff {
    waits = List.copyOf(waits);
    if (waits.isEmpty() || waits.stream().anyMatch(Duration::isNegative)) {
      throw new IllegalArgumentException("Back-off needs at least one wait, none negative");
    }
  }

  /**
   * Between half of the wait and all of it, so that what failed together does not come back
   * together.
   *
   * @param attempt the try that failed, from 1
   * @param dice evenly from 0 to 1; 1 is the whole wait
   * @return when to try next; empty when it is to be given up
   */
  public Optional<Instant> next(int attempt, Instant since, Instant now, double dice) {
    Duration whole = waits.get(Math.min(attempt, waits.size()) - 1);
    Instant next = now.plusNanos(Math.round(whole.toNanos() * (0.5 + 0.5 * dice)));
    return next.isAfter(since.plus(giveUpAfter)) ? Optional.empty() : Optional.of(next);
  }
}
