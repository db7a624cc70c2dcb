package org.tapeline.fitting.fitday;

import java.util.Comparator;

/**
 * A slot that nobody has, seen from a field.
 *
 * @param minutes on the road, one way; 0 at the field itself
 */
public record ReachableSlot(OpenSlot slot, int minutes) {

  static final Comparator<ReachableSlot> ORDER =
      Comparator.comparingInt(ReachableSlot::minutes)
          .thenComparing((ReachableSlot s) -> s.slot().field())
          .thenComparing(ReachableSlot::slot, OpenSlot.ORDER);
}
