package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.fitday.MovedDay.Displaced;

@DisplayName("On a fit day that is moved")
class MovedDayTest {
  private static final UUID DAY = new UUID(3, 1);
  private static final Instant NOW = Instant.parse("2026-08-03T15:00:00Z");
  private static final Instant STARTS = NOW.plus(Duration.ofDays(2));
  private static final Opening BEFORE = opening("NORTH", STARTS, 2, 15);
  private static final BookingWeights WEIGHTS = new BookingWeights("test", 1, 20, 60, 120, "test");
  private static final TravelTimes ROADS = new TravelTimes(Map.of("NORTH", Map.of("RIVER", 30)));

  /** Open for an hour. */
  private static Opening opening(String field, Instant starts, int fitters, int minutes) {
    return new Opening(
        field, starts, starts.plusSeconds(3600), "America/Chicago", fitters, minutes);
  }

  private static List<OpenSlot> slots(UUID day, Opening opening) {
    List<OpenSlot> slots = new ArrayList<>();
    FitDaySlots.of(opening)
        .forEach(
            s -> slots.add(new OpenSlot(day, opening.field(), s.startsAt(), s.endsAt(), s.lane())));
    return slots;
  }

  /** Booked on a slot of the day as it was, by its number in the row. */
  private static Displaced booked(int slot, Instant earliest, boolean arrivalKnown) {
    OpenSlot was = slots(DAY, BEFORE).get(slot);
    UUID refitCase = new UUID(1, slot);
    return new Displaced(
        new SlotSeeker(refitCase, true, NOW, "NORTH", earliest, Set.of()),
        arrivalKnown,
        new TakenPlace(refitCase, BEFORE.stepOf(was.startsAt()), was.lane(), was));
  }

  private static Displaced booked(int slot) {
    return booked(slot, NOW, true);
  }

  private static Map<UUID, OpenSlot> kept(
      Opening moved, List<OpenSlot> elsewhere, Displaced... displaced) {
    List<OpenSlot> open = new ArrayList<>(slots(DAY, moved));
    open.addAll(elsewhere);
    return MovedDay.kept(List.of(displaced), DAY, moved, open, ROADS, WEIGHTS);
  }

  @Test
  @DisplayName("everybody keeps the place in the row")
  void keepsPlaces() {
    Opening moved = opening("RIVER", STARTS.plusSeconds(7200), 2, 20);
    Map<UUID, OpenSlot> kept = kept(moved, List.of(), booked(0), booked(1), booked(3));
    List<OpenSlot> row = slots(DAY, moved);
    assertThat(kept)
        .containsEntry(new UUID(1, 0), row.get(0))
        .containsEntry(new UUID(1, 1), row.get(1))
        .containsEntry(new UUID(1, 3), row.get(3));
  }

  @Test
  @DisplayName("who has no place in the new row keeps none")
  void noPlace() {
    Map<UUID, OpenSlot> oneFitter =
        kept(opening("NORTH", STARTS.plusSeconds(900), 1, 15), List.of(), booked(0), booked(1));
    assertThat(oneFitter).containsOnlyKeys(new UUID(1, 0));
    Map<UUID, OpenSlot> longer =
        kept(opening("NORTH", STARTS, 2, 30), List.of(), booked(2), booked(6));
    assertThat(longer).containsOnlyKeys(new UUID(1, 2));
  }

  @Test
  @DisplayName("nobody is kept before the replacement arrives, nor out of reach")
  void arrival() {
    Opening earlier = opening("NORTH", STARTS.minusSeconds(3600), 2, 15);
    assertThat(kept(earlier, List.of(), booked(0, STARTS, true))).isEmpty();
    Opening far = opening("ELSEWHERE", STARTS, 2, 15);
    assertThat(kept(far, List.of(), booked(0))).isEmpty();
  }

  @Test
  @DisplayName("a place is not kept when another day costs less, unless the arrival is unknown")
  void anotherDay() {
    Opening muchLater = opening("NORTH", STARTS.plus(Duration.ofDays(9)), 2, 15);
    List<OpenSlot> soon = slots(new UUID(3, 2), opening("NORTH", STARTS, 1, 15));
    assertThat(kept(muchLater, soon, booked(0))).isEmpty();
    assertThat(kept(muchLater, soon, booked(0, NOW, false))).hasSize(1);
    List<OpenSlot> later =
        slots(new UUID(3, 2), opening("NORTH", STARTS.plus(Duration.ofDays(10)), 1, 15));
    assertThat(kept(muchLater, later, booked(0))).hasSize(1);
  }

  @Test
  @DisplayName("whose slot stays as it is keeps it, whatever other days offer")
  void sameSlot() {
    List<OpenSlot> sooner =
        slots(new UUID(3, 2), opening("NORTH", STARTS.minusSeconds(86_400), 1, 15));
    assertThat(kept(opening("NORTH", STARTS, 3, 15), sooner, booked(1))).hasSize(1);
  }
}
