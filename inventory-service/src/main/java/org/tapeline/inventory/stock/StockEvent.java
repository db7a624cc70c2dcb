package org.tapeline.inventory.stock;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What happens to the parts at a place. */
public sealed interface StockEvent {
  String place();

  /**
   * Parts went into a helmet at a fit.
   *
   * @param keptFor which of the stock was taken: a model's, or {@code any}; empty in old ones
   */
  record PartUsed(String place, String item, int quantity, UUID session, Optional<String> keptFor)
      implements StockEvent {}

  /**
   * Parts were counted; {@code variance} is counted minus what the books said, in pieces.
   *
   * @param why {@code opening-stock} or {@code count}
   * @param reason what explains the variance, a code of the stock policy
   */
  record StockCounted(
      String place,
      String item,
      Optional<String> model,
      int counted,
      int variance,
      String why,
      Optional<String> reason,
      String by,
      Instant at)
      implements StockEvent {}

  /**
   * Parts were booked by hand, or put on a helmet at an inspection.
   *
   * @param place whose stream it is: the one that gave, else the one that got
   * @param from the account that gave
   * @param to the account that got
   */
  record PartMoved(
      UUID move,
      String place,
      String item,
      Optional<String> model,
      int quantity,
      String from,
      String to,
      String why,
      String by,
      Instant at)
      implements StockEvent {}
}
