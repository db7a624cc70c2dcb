package org.tapeline.fitting.fitday;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;

/**
 * Who gets which slot. The most urgent case chooses first, and its siblings choose with it; each
 * household takes what costs it the least in days of waiting and minutes of travel. The same cases,
 * slots and roads make the same plan, in whatever order they are given.
 */
public final class BookingPlan {
  private final BookingCost cost;
  private final Map<UUID, TreeSet<OpenSlot>> days = new TreeMap<>();
  private final List<Stay> stays;

  private BookingPlan(
      Collection<OpenSlot> open,
      Collection<Stay> stays,
      TravelTimes travel,
      BookingWeights weights) {
    this.cost = new BookingCost(weights, travel);
    this.stays = new ArrayList<>(stays);
    for (OpenSlot slot : open) {
      days.computeIfAbsent(slot.fitDay(), day -> new TreeSet<>(OpenSlot.ORDER)).add(slot);
    }
  }

  /**
   * The slot of each case that gets one.
   *
   * @param stays slots that players have already
   */
  public static Map<UUID, OpenSlot> of(
      Collection<SlotSeeker> seekers,
      Collection<OpenSlot> open,
      Collection<Stay> stays,
      TravelTimes travel,
      BookingWeights weights) {
    return new BookingPlan(open, stays, travel, weights).seat(seekers);
  }

  private Map<UUID, OpenSlot> seat(Collection<SlotSeeker> seekers) {
    Map<UUID, OpenSlot> plan = new LinkedHashMap<>();
    List<SlotSeeker> left = new ArrayList<>(seekers);
    left.sort(SlotSeeker.BY_URGENCY);
    while (!left.isEmpty() && !days.isEmpty()) {
      SlotSeeker first = left.getFirst();
      List<SlotSeeker> household =
          left.stream().filter(s -> s == first || s.siblingOf(first.guardians())).toList();
      left.removeAll(household);
      seats(household)
          .forEach(
              (seeker, slot) -> {
                plan.put(seeker.refitCase(), slot);
                take(seeker, slot);
              });
    }
    return plan;
  }

  private Map<SlotSeeker, OpenSlot> seats(List<SlotSeeker> household) {
    List<Stay> own =
        stays.stream()
            .filter(stay -> household.stream().anyMatch(s -> s.siblingOf(stay.guardians())))
            .toList();
    return new HouseholdSeats(cost, days.values(), own).best(household).seats();
  }

  private void take(SlotSeeker seeker, OpenSlot slot) {
    TreeSet<OpenSlot> day = days.get(slot.fitDay());
    day.remove(slot);
    if (day.isEmpty()) {
      days.remove(slot.fitDay());
    }
    stays.add(Stay.of(seeker, slot));
  }
}
