package org.tapeline.inventory.stock;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What happens to the parts at a place. */
public sealed interface StockEvent {
  String place();

  /** Parts went into a helmet. */
  record PartUsed(String place, String item, int quantity, UUID session) implements StockEvent {}

  /** Parts were counted; {@code variance} is counted minus what the books said, in pieces. */
  record StockCounted(
      String place,
      String item,
      Optional<String> model,
      int counted,
      int variance,
      String why,
      String by,
      Instant at)
      implements StockEvent {}
}
