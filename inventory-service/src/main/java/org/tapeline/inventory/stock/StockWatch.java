package org.tapeline.inventory.stock;

import java.util.UUID;
import org.tapeline.journal.Cause;

/** Who must act at once, in the same transaction, when parts come to a place or leave it. */
public interface StockWatch {

  /** They went into a player's helmet. */
  void used(String place, String item, UUID player, Cause cause);

  /** A count, or a move by hand, has found more or fewer than the books had. */
  void changed(String place, String item, Cause cause);
}
