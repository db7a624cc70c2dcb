package org.tapeline.inventory.stock;

import org.tapeline.journal.Cause;

/** Who must look, in the same transaction, when less of an item is at a place than before. */
public interface ShelfWatch {
  void lowered(String place, String item, Cause cause);
}
