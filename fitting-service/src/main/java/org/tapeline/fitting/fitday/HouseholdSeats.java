package org.tapeline.fitting.fitday;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Finds the cheapest slots for the players of one household, together or apart. */
final class HouseholdSeats {
  private final BookingCost cost;
  private final Collection<? extends Collection<OpenSlot>> days;
  private final List<Stay> stays;

  /**
   * @param days the open slots of each fit day, earliest first
   * @param stays of this household
   */
  HouseholdSeats(
      BookingCost cost, Collection<? extends Collection<OpenSlot>> days, Collection<Stay> stays) {
    this.cost = cost;
    this.days = days;
    this.stays = List.copyOf(stays);
  }

  /** Who sits where, and what that costs the household. */
  record Offer(Map<SlotSeeker, OpenSlot> seats, long cost) {}

  /** Everybody who can be seated is; all on one day when that costs no more. */
  Offer best(List<SlotSeeker> household) {
    Offer apart = apart(household);
    if (household.size() == 1) {
      return apart;
    }
    return together(household)
        .filter(t -> apart.seats().size() < household.size() || t.cost() <= apart.cost())
        .orElse(apart);
  }

  /** One after the other, each to what is cheapest for it then. */
  private Offer apart(List<SlotSeeker> household) {
    Map<SlotSeeker, OpenSlot> seats = new LinkedHashMap<>();
    List<Stay> there = new ArrayList<>(stays);
    long sum = 0;
    for (SlotSeeker seeker : household) {
      Found found = cheapest(seeker, seats.values(), there);
      if (found.slot() != null) {
        seats.put(seeker, found.slot());
        there.add(Stay.of(seeker, found.slot()));
        sum += found.price();
      }
    }
    return new Offer(seats, sum);
  }

  private record Found(OpenSlot slot, long price) {}

  private Found cheapest(SlotSeeker seeker, Collection<OpenSlot> taken, List<Stay> there) {
    Found best = new Found(null, Long.MAX_VALUE);
    for (Collection<OpenSlot> day : days) {
      for (OpenSlot slot : day) {
        OptionalLong price =
            taken.contains(slot) ? OptionalLong.empty() : cost.of(seeker, slot, there);
        if (price.isPresent() && isBetter(seeker, price.getAsLong(), slot, best)) {
          best = new Found(slot, price.getAsLong());
        }
        if (price.isPresent() && there.isEmpty()) {
          break; // where nobody of the household is, a later slot of the day only costs more
        }
      }
    }
    return best;
  }

  /** At equal cost the own field, then the earlier slot. */
  private static boolean isBetter(SlotSeeker seeker, long price, OpenSlot slot, Found best) {
    if (best.slot() == null || price != best.price()) {
      return price < best.price();
    }
    boolean own = slot.field().equals(seeker.field());
    boolean bestOwn = best.slot().field().equals(seeker.field());
    return own == bestOwn ? OpenSlot.ORDER.compare(slot, best.slot()) < 0 : own;
  }

  private Optional<Offer> together(List<SlotSeeker> household) {
    Offer best = null;
    for (Collection<OpenSlot> day : days) {
      List<OpenSlot> slots = List.copyOf(day);
      for (int first = 0; first + household.size() <= slots.size(); first++) {
        Optional<Offer> offer = from(slots.subList(first, slots.size()), household);
        if (offer.isEmpty()) {
          break;
        }
        if (best == null || offer.get().cost() < best.cost()) {
          best = offer.get();
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** All on one day, packed from its first slot on; empty when they do not all fit. */
  private Optional<Offer> from(List<OpenSlot> slots, List<SlotSeeker> household) {
    Map<SlotSeeker, OpenSlot> seats = new LinkedHashMap<>();
    List<SlotSeeker> left = new ArrayList<>(household);
    List<Stay> there = new ArrayList<>(stays);
    long sum = 0;
    for (OpenSlot slot : slots) {
      for (SlotSeeker seeker : left) {
        OptionalLong price = cost.of(seeker, slot, there);
        if (price.isPresent()) {
          seats.put(seeker, slot);
          left.remove(seeker);
          there.add(Stay.of(seeker, slot));
          sum += price.getAsLong();
          break;
        }
      }
      if (left.isEmpty()) {
        return Optional.of(new Offer(seats, sum));
      }
    }
    return Optional.empty();
  }
}
