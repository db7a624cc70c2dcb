package org.tapeline.inventory.stock;

import java.util.UUID;
import org.tapeline.journal.Cause;

/** Who must act at once, in the same transaction, when parts have left the stock of a place. */
public interface StockWatch {
  void used(String place, String item, UUID player, Cause cause);
}
