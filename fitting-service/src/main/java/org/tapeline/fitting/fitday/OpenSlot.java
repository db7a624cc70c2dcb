package org.tapeline.fitting.fitday;

import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;

/**
 * A slot that nobody has.
 *
 * @param lane which of the fitters, from 1
 */
public record OpenSlot(UUID fitDay, String field, Instant startsAt, Instant endsAt, int lane) {

  /** The earliest first; the rest only so that there is one order. */
  public static final Comparator<OpenSlot> ORDER =
      Comparator.comparing(OpenSlot::startsAt)
          .thenComparingInt(OpenSlot::lane)
          .thenComparing(OpenSlot::field)
          .thenComparing(OpenSlot::fitDay);
}
