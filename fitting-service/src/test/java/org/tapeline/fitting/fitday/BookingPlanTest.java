package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The plan of bookings")
class BookingPlanTest {
  private static final Instant NOW = Instant.parse("2026-08-03T15:00:00Z");
  private static final Instant TOMORROW = NOW.plus(Duration.ofDays(1));
  private static final BookingWeights WEIGHTS = new BookingWeights("test", 1, 20, 60, 120, "test");
  private static final TravelTimes ROADS =
      new TravelTimes(
          Map.of(
              "NORTH", Map.of("RIVER", 30, "SOUTH", 90, "FAR", 121),
              "RIVER", Map.of("NORTH", 30)));

  private static SlotSeeker seeker(int age, String field, Instant earliest, int... guardians) {
    return new SlotSeeker(
        new UUID(1, age), true, NOW.minusSeconds(1_000L - age), field, earliest, ids(guardians));
  }

  private static SlotSeeker seeker(int age, int... guardians) {
    return seeker(age, "NORTH", NOW, guardians);
  }

  private static SlotSeeker withHelmet(SlotSeeker s) {
    return new SlotSeeker(
        s.refitCase(), false, s.openedAt(), s.field(), s.earliest(), s.guardians());
  }

  private static Set<UUID> ids(int... guardians) {
    Set<UUID> ids = new HashSet<>();
    for (int guardian : guardians) {
      ids.add(new UUID(2, guardian));
    }
    return ids;
  }

  /** Slots of 15 minutes from then on, one after the other. */
  private static List<OpenSlot> day(int day, String field, Instant opens, int steps, int lanes) {
    List<OpenSlot> slots = new ArrayList<>();
    for (int step = 0; step < steps; step++) {
      Instant starts = opens.plusSeconds(900L * step);
      for (int lane = 1; lane <= lanes; lane++) {
        slots.add(new OpenSlot(new UUID(3, day), field, starts, starts.plusSeconds(900), lane));
      }
    }
    return slots;
  }

  private static List<OpenSlot> both(List<OpenSlot> one, List<OpenSlot> other) {
    return Stream.concat(one.stream(), other.stream()).toList();
  }

  private static Map<UUID, OpenSlot> plan(List<SlotSeeker> seekers, List<OpenSlot> open) {
    return BookingPlan.of(seekers, open, List.of(), ROADS, WEIGHTS);
  }

  private static OpenSlot slotOf(SlotSeeker seeker, Map<UUID, OpenSlot> plan) {
    return plan.get(seeker.refitCase());
  }

  @Test
  @DisplayName("lets whoever has no helmet choose before an older case that has one")
  void urgency() {
    SlotSeeker old = withHelmet(seeker(1));
    SlotSeeker young = seeker(9);
    Map<UUID, OpenSlot> plan = plan(List.of(old, young), day(1, "NORTH", TOMORROW, 1, 1));
    assertThat(plan).containsOnlyKeys(young.refitCase());
  }

  @Test
  @DisplayName("lets the older case choose first among equals")
  void age() {
    List<OpenSlot> slots = day(1, "NORTH", TOMORROW, 3, 1);
    Map<UUID, OpenSlot> plan = plan(List.of(seeker(2), seeker(1), seeker(3)), slots);
    for (int age = 1; age <= 3; age++) {
      assertThat(slotOf(seeker(age), plan)).isEqualTo(slots.get(age - 1));
    }
  }

  @Test
  @DisplayName("books nobody before what the case needs is there, to the second")
  void arrival() {
    List<OpenSlot> slots = day(1, "NORTH", TOMORROW, 2, 1);
    SlotSeeker just = seeker(1, "NORTH", TOMORROW);
    SlotSeeker late = seeker(1, "NORTH", TOMORROW.plusSeconds(1));
    assertThat(slotOf(just, plan(List.of(just), slots))).isEqualTo(slots.get(0));
    assertThat(slotOf(late, plan(List.of(late), slots))).isEqualTo(slots.get(1));
  }

  @Test
  @DisplayName("weighs the road against the days: two days more at the own field, not three")
  void travel() {
    List<OpenSlot> river = day(1, "RIVER", TOMORROW, 1, 1);
    List<OpenSlot> soon = day(2, "NORTH", TOMORROW.plus(Duration.ofMinutes(2160)), 1, 1);
    List<OpenSlot> later = day(2, "NORTH", TOMORROW.plus(Duration.ofMinutes(2161)), 1, 1);
    SlotSeeker one = seeker(1);
    assertThat(slotOf(one, plan(List.of(one), both(river, soon))).field()).isEqualTo("NORTH");
    assertThat(slotOf(one, plan(List.of(one), both(river, later))).field()).isEqualTo("RIVER");
  }

  @Test
  @DisplayName("sends nobody where no road is known, or farther than two hours")
  void outOfReach() {
    SlotSeeker one = seeker(1);
    assertThat(plan(List.of(one), day(1, "FAR", TOMORROW, 1, 1))).isEmpty();
    assertThat(plan(List.of(one), day(1, "ELSEWHERE", TOMORROW, 1, 1))).isEmpty();
    assertThat(plan(List.of(one), day(1, "SOUTH", TOMORROW, 1, 1))).hasSize(1);
  }

  @Test
  @DisplayName("seats siblings side by side or one after the other, before others of their age")
  void siblings() {
    SlotSeeker first = seeker(1, 7);
    SlotSeeker other = seeker(2);
    SlotSeeker sibling = seeker(3, 7, 8);
    List<OpenSlot> row = day(1, "NORTH", TOMORROW, 3, 1);
    Map<UUID, OpenSlot> oneFitter = plan(List.of(first, other, sibling), row);
    assertThat(slotOf(first, oneFitter)).isEqualTo(row.get(0));
    assertThat(slotOf(sibling, oneFitter)).isEqualTo(row.get(1));
    assertThat(slotOf(other, oneFitter)).isEqualTo(row.get(2));
    Map<UUID, OpenSlot> twoFitters =
        plan(List.of(first, other, sibling), day(1, "NORTH", TOMORROW, 2, 2));
    assertThat(slotOf(first, twoFitters).startsAt()).isEqualTo(TOMORROW);
    assertThat(slotOf(sibling, twoFitters).startsAt()).isEqualTo(TOMORROW);
  }

  @Test
  @DisplayName("lets a household travel once rather than split it for a day less of one player")
  void once() {
    SlotSeeker first = seeker(1, 7);
    SlotSeeker sibling = seeker(2, 7);
    List<OpenSlot> single = day(1, "NORTH", TOMORROW, 1, 1);
    List<OpenSlot> next = day(2, "NORTH", TOMORROW.plus(Duration.ofMinutes(1410)), 2, 1);
    Map<UUID, OpenSlot> plan = plan(List.of(first, sibling), both(single, next));
    assertThat(plan.values()).extracting(OpenSlot::fitDay).containsOnly(new UUID(3, 2));
  }

  @Test
  @DisplayName("splits a household when one of them would have to wait for weeks")
  void apart() {
    SlotSeeker first = seeker(1, 7);
    SlotSeeker waits = seeker(2, "NORTH", NOW.plus(Duration.ofDays(20)), 7);
    List<OpenSlot> soon = day(1, "NORTH", TOMORROW, 2, 1);
    List<OpenSlot> late = day(2, "NORTH", NOW.plus(Duration.ofDays(21)), 2, 1);
    Map<UUID, OpenSlot> plan = plan(List.of(first, waits), both(soon, late));
    assertThat(slotOf(first, plan).startsAt()).isEqualTo(TOMORROW);
    assertThat(slotOf(waits, plan).fitDay()).isEqualTo(new UUID(3, 2));
  }

  @Test
  @DisplayName("brings a sibling to the day and the hour that the household has already")
  void joins() {
    List<OpenSlot> soon = day(1, "NORTH", TOMORROW, 1, 1);
    List<OpenSlot> row = day(2, "NORTH", TOMORROW.plus(Duration.ofMinutes(900)), 4, 1);
    Stay stay = new Stay(row.get(2).fitDay(), row.get(2).startsAt(), row.get(2).endsAt(), ids(7));
    List<OpenSlot> open = new ArrayList<>(both(soon, row));
    open.remove(row.get(2));
    SlotSeeker sibling = seeker(1, 7);
    Map<UUID, OpenSlot> plan =
        BookingPlan.of(List.of(sibling), open, List.of(stay), ROADS, WEIGHTS);
    assertThat(slotOf(sibling, plan)).isEqualTo(row.get(1));
  }

  @Test
  @DisplayName("goes by the figures that are delivered, and refuses those that cannot be")
  void figures() {
    assertThat(BookingFile.builtIn().source()).isNotBlank();
    assertThatThrownBy(() -> new BookingWeights("x", 1, 0, 20, 120, "test"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BookingWeights("x", 1, 20, 241, 120, "test"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BookingWeights("x", 1, 20, 20, 601, "test"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BookingWeights("x", 1, 20, 20, 120, " "))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
