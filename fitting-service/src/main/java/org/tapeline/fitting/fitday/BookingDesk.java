package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.fitting.fitday.MovedDay.Displaced;
import org.tapeline.fitting.place.Travel;

/** Plans bookings over the slots and roads that there are; the slots are locked meanwhile. */
@ApplicationScoped
public class BookingDesk {
  private final BookingWeights weights = BookingFile.builtIn();
  private final Clock clock;

  BookingDesk(Clock clock) {
    this.clock = clock;
  }

  /**
   * The slot of each case that gets one.
   *
   * @param siblings guardians of the cases of their siblings, which may have slots already
   */
  public Map<UUID, OpenSlot> plan(Collection<SlotSeeker> seekers, Map<UUID, Set<UUID>> siblings) {
    if (seekers.isEmpty()) {
      return Map.of();
    }
    TravelTimes travel = travelFrom(seekers);
    List<OpenSlot> open = open(seekers, travel);
    return open.isEmpty()
        ? Map.of()
        : BookingPlan.of(seekers, open, stays(siblings), travel, weights);
  }

  /** The slots of those who keep their places on a day that was moved. */
  public Map<UUID, OpenSlot> kept(UUID fitDay, List<Displaced> displaced) {
    FitDayRow day = FitDayRow.findById(fitDay);
    if (day.cancelled || displaced.isEmpty()) {
      return Map.of();
    }
    List<SlotSeeker> seekers = displaced.stream().map(Displaced::seeker).toList();
    TravelTimes travel = travelFrom(seekers);
    return MovedDay.kept(displaced, fitDay, day.opening(), open(seekers, travel), travel, weights);
  }

  /**
   * What whoever trains at that field may choose from: no slot that is out of reach. The own
   * field's first, then by the way there; at each field the earliest first.
   *
   * @param from no slot that starts earlier; nor one that has started
   */
  public List<ReachableSlot> reachable(String field, Instant from) {
    TravelTimes travel = new TravelTimes(Travel.minutesFrom(Set.of(field)));
    Instant now = clock.instant();
    return FitSlotRow.open(travel.around(Set.of(field)), from.isAfter(now) ? from : now).stream()
        .flatMap(
            slot ->
                travel.between(field, slot.field()).stream()
                    .filter(minutes -> minutes <= weights.farthestMinutes())
                    .mapToObj(minutes -> new ReachableSlot(slot, minutes)))
        .sorted(ReachableSlot.ORDER)
        .toList();
  }

  private List<OpenSlot> open(Collection<SlotSeeker> seekers, TravelTimes travel) {
    return FitSlotRow.open(travel.around(fieldsOf(seekers)), clock.instant());
  }

  private static TravelTimes travelFrom(Collection<SlotSeeker> seekers) {
    return new TravelTimes(Travel.minutesFrom(fieldsOf(seekers)));
  }

  private static Set<String> fieldsOf(Collection<SlotSeeker> seekers) {
    Set<String> fields = new TreeSet<>();
    seekers.forEach(seeker -> fields.add(seeker.field()));
    return fields;
  }

  private static List<Stay> stays(Map<UUID, Set<UUID>> siblings) {
    return FitSlotRow.of(siblings.keySet()).stream()
        .map(s -> new Stay(s.fitDay, s.startsAt, s.endsAt, siblings.get(s.refitCase)))
        .toList();
  }
}
