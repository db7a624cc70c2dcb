package org.tapeline.fitting.fitday;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.UUID;

/**
 * Who keeps the place in the row when a fit day is moved: everybody for whom the same place of the
 * new row is there, is not before what the case needs, and costs no more than a slot of another
 * day. Whose slot has not moved at all keeps it in any case, and so hears nothing.
 */
public final class MovedDay {
  private MovedDay() {}

  /**
   * Somebody who was booked.
   *
   * @param arrivalKnown false while what the case needs is being looked for anew: no slot but its
   *     own is offered to it
   */
  public record Displaced(SlotSeeker seeker, boolean arrivalKnown, TakenPlace place) {}

  /**
   * The slots of those who keep their places.
   *
   * @param moved the day as it is now; field, hours and length of a slot count
   * @param open the slots that nobody has, those of the moved day among them
   */
  public static Map<UUID, OpenSlot> kept(
      List<Displaced> displaced,
      UUID fitDay,
      Opening moved,
      Collection<OpenSlot> open,
      TravelTimes travel,
      BookingWeights weights) {
    BookingCost cost = new BookingCost(weights, travel);
    Map<Place, OpenSlot> row = row(fitDay, moved, open);
    List<OpenSlot> elsewhere = new ArrayList<>(open);
    elsewhere.removeIf(slot -> slot.fitDay().equals(fitDay));
    Map<UUID, OpenSlot> kept = new HashMap<>();
    for (Displaced one : displaced) {
      OpenSlot slot = row.get(new Place(one.place().step(), one.place().lane()));
      if (slot != null && (same(slot, one.place().was()) || suits(one, slot, elsewhere, cost))) {
        kept.put(one.seeker().refitCase(), slot);
      }
    }
    return kept;
  }

  private record Place(long step, int lane) {}

  private static Map<Place, OpenSlot> row(UUID fitDay, Opening moved, Collection<OpenSlot> open) {
    Map<Place, OpenSlot> row = new HashMap<>();
    for (OpenSlot slot : open) {
      if (slot.fitDay().equals(fitDay)) {
        row.put(new Place(moved.stepOf(slot.startsAt()), slot.lane()), slot);
      }
    }
    return row;
  }

  private static boolean same(OpenSlot slot, OpenSlot was) {
    return slot.field().equals(was.field()) && slot.startsAt().equals(was.startsAt());
  }

  private static boolean suits(
      Displaced one, OpenSlot slot, List<OpenSlot> elsewhere, BookingCost cost) {
    OptionalLong here = cost.of(one.seeker(), slot, List.of());
    if (here.isEmpty()) {
      return false;
    }
    return !one.arrivalKnown()
        || elsewhere.stream()
            .map(other -> cost.of(one.seeker(), other, List.of()))
            .noneMatch(other -> other.isPresent() && other.getAsLong() < here.getAsLong());
  }
}
