package org.tapeline.journal.backlog;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * What a service has still to do with events: to send its own, and to apply its peers'. It is that
 * of the service's database, so every copy of the service sees the same.
 *
 * @param unsent events of the journal and changed values of compacted topics that have not reached
 *     Kafka
 * @param oldestUnsent when the oldest of them was written; empty when all was sent
 * @param parked by topic, records that could not be applied and those that wait behind them
 * @param oldestParked when the first of them was parked; empty when none is
 */
public record Backlog(
    long unsent,
    Optional<Instant> oldestUnsent,
    Map<String, Long> parked,
    Optional<Instant> oldestParked) {

  public Backlog {
    parked = Map.copyOf(parked);
  }

  /** All parked records together. */
  public long parkedInAll() {
    return parked.values().stream().mapToLong(Long::longValue).sum();
  }
}
