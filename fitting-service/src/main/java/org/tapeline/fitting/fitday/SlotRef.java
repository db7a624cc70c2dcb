package org.tapeline.fitting.fitday;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A slot as a page names it: whichever of the fitters, since that makes no difference to a family.
 *
 * @param startsAt whole seconds
 */
public record SlotRef(UUID fitDay, Instant startsAt) {

  public static SlotRef of(OpenSlot slot) {
    return new SlotRef(slot.fitDay(), slot.startsAt());
  }

  public static SlotRef of(Booking booking) {
    return new SlotRef(booking.fitDay(), booking.startsAt());
  }

  /** What {@link #text} wrote; empty for anything else. */
  public static Optional<SlotRef> parse(String text) {
    String[] parts = text == null ? new String[0] : text.strip().split("_", -1);
    if (parts.length != 2) {
      return Optional.empty();
    }
    try {
      Instant startsAt = Instant.ofEpochSecond(Long.parseLong(parts[1]));
      return Optional.of(new SlotRef(UUID.fromString(parts[0]), startsAt));
    } catch (IllegalArgumentException | DateTimeException e) {
      return Optional.empty();
    }
  }

  public String text() {
    return fitDay + "_" + startsAt.getEpochSecond();
  }
}
