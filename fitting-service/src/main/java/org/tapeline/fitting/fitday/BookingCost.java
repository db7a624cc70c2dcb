package org.tapeline.fitting.fitday;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * What a slot costs a household, in minutes of travel times 1440: the days until the fit, weighed
 * against the road, and for a sibling of somebody who is there that day only the longer stay, for
 * they travel once. Whole numbers, so that equal is equal.
 */
final class BookingCost {
  private static final long MINUTES_A_DAY = 1440;

  private final BookingWeights weights;
  private final TravelTimes travel;

  BookingCost(BookingWeights weights, TravelTimes travel) {
    this.weights = weights;
    this.travel = travel;
  }

  /**
   * Empty for a slot that the case cannot have: before what it needs is there, or out of reach.
   *
   * @param stays of the seeker's own household
   */
  OptionalLong of(SlotSeeker seeker, OpenSlot slot, List<Stay> stays) {
    OptionalInt road = travel.between(seeker.field(), slot.field());
    if (road.isEmpty()
        || road.getAsInt() > weights.farthestMinutes()
        || slot.startsAt().isBefore(seeker.earliest())) {
      return OptionalLong.empty();
    }
    long waits =
        Duration.between(seeker.earliest(), slot.startsAt()).toMinutes()
            * weights.travelMinutesPerDay();
    long trip = weights.minutesPerTrip() + (long) road.getAsInt();
    return OptionalLong.of(waits + Math.min(trip, longerStay(slot, stays)) * MINUTES_A_DAY);
  }

  /** Minutes more between the first coming and the last going; endless when nobody is there. */
  private static long longerStay(OpenSlot slot, List<Stay> stays) {
    List<Stay> there = stays.stream().filter(s -> s.fitDay().equals(slot.fitDay())).toList();
    if (there.isEmpty()) {
      return Long.MAX_VALUE;
    }
    Instant from = there.stream().map(Stay::from).min(Instant::compareTo).orElseThrow();
    Instant to = there.stream().map(Stay::to).max(Instant::compareTo).orElseThrow();
    long before = Math.max(0, Duration.between(slot.startsAt(), from).toMinutes());
    long after = Math.max(0, Duration.between(to, slot.endsAt()).toMinutes());
    return before + after;
  }
}
