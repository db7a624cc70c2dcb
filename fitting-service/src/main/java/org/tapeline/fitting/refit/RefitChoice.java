package org.tapeline.fitting.refit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.ReachableSlot;

/**
 * What a guardian can choose from for an open re-fit case.
 *
 * @param field where the player trains
 * @param withoutHelmet the player has no helmet that may be worn; also when that is not known
 * @param from when everything that the case needs is there, not before now; empty while that is not
 *     known, and then nothing is free
 * @param booking the slot that the case has
 * @param revision rises with every booking of the case
 * @param free the slots from then on, without the one that the case has
 */
public record RefitChoice(
    UUID refitCase,
    UUID player,
    String field,
    boolean withoutHelmet,
    Optional<Instant> from,
    Optional<Booking> booking,
    long revision,
    List<ReachableSlot> free) {
  public RefitChoice {
    free = List.copyOf(free);
  }
}
