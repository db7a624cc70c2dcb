package org.tapeline.fitting.whole;

import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.tapeline.journal.UuidV7;

/** An invented player, and the tag of a helmet that nobody else has. */
record Person(UUID player, String number, String team, String tag) {
  private static final AtomicInteger LAST = new AtomicInteger();

  static Person next() {
    return next("TEAM-" + (LAST.get() + 1));
  }

  static Person next(String team) {
    int n = LAST.incrementAndGet();
    return new Person(UuidV7.next(), "LV-%04d".formatted(n), team, "LV%04d".formatted(n));
  }
}
