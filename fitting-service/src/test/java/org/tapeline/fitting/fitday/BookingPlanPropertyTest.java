package org.tapeline.fitting.fitday;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever cases, slots and roads there are. */
class BookingPlanPropertyTest {
  private static final Instant NOW = Instant.parse("2026-08-03T15:00:00Z");
  private static final BookingWeights WEIGHTS = new BookingWeights("test", 1, 20, 60, 120, "test");
  private static final TravelTimes ROADS =
      new TravelTimes(
          Map.of(
              "A", Map.of("B", 30, "C", 200),
              "B", Map.of("A", 30, "C", 60),
              "C", Map.of("B", 60)));
  private static final BookingCost COST = new BookingCost(WEIGHTS, ROADS);

  private static Map<UUID, OpenSlot> plan(List<SlotSeeker> seekers, List<OpenSlot> open) {
    return BookingPlan.of(seekers, open, List.of(), ROADS, WEIGHTS);
  }

  @Property(tries = 300)
  void noSlotTwiceAndNobodyBeforeTheArrivalOrOutOfReach(
      @ForAll("seekers") List<SlotSeeker> seekers, @ForAll("slots") List<OpenSlot> open) {
    Map<UUID, OpenSlot> plan = plan(seekers, open);
    assertThat(new HashSet<>(plan.values())).hasSameSizeAs(plan.values());
    assertThat(open).containsAll(plan.values());
    for (SlotSeeker seeker : seekers) {
      OpenSlot slot = plan.get(seeker.refitCase());
      if (slot != null) {
        assertThat(slot.startsAt()).isAfterOrEqualTo(seeker.earliest());
        assertThat(COST.of(seeker, slot, List.of())).isPresent();
      }
    }
  }

  @Property(tries = 300)
  void whoeverGetsNoneCouldHaveNoneOfThoseThatAreLeft(
      @ForAll("seekers") List<SlotSeeker> seekers, @ForAll("slots") List<OpenSlot> open) {
    Map<UUID, OpenSlot> plan = plan(seekers, open);
    List<OpenSlot> left = new ArrayList<>(open);
    left.removeAll(plan.values());
    for (SlotSeeker seeker : seekers) {
      if (!plan.containsKey(seeker.refitCase())) {
        assertThat(left).noneMatch(slot -> COST.of(seeker, slot, List.of()).isPresent());
      }
    }
  }

  @Property(tries = 300)
  void theSameCasesAndSlotsMakeTheSamePlanInWhateverOrder(
      @ForAll("seekers") List<SlotSeeker> seekers,
      @ForAll("slots") List<OpenSlot> open,
      @ForAll long seed) {
    List<SlotSeeker> shuffled = new ArrayList<>(seekers);
    List<OpenSlot> mixed = new ArrayList<>(open);
    Collections.shuffle(shuffled, new Random(seed));
    Collections.shuffle(mixed, new Random(~seed));
    assertThat(plan(shuffled, mixed)).isEqualTo(plan(seekers, open));
  }

  @Property(tries = 300)
  void theMoreUrgentOfTwoWhoAreAlikeNeverPaysMore(
      @ForAll("seekers") List<SlotSeeker> seekers, @ForAll("slots") List<OpenSlot> open) {
    List<SlotSeeker> alone = new ArrayList<>();
    for (SlotSeeker s : seekers) {
      alone.add(
          new SlotSeeker(s.refitCase(), s.withoutHelmet(), s.openedAt(), s.field(), NOW, Set.of()));
    }
    alone.sort(SlotSeeker.BY_URGENCY);
    Map<UUID, OpenSlot> plan = plan(alone, open);
    for (int first = 0; first < alone.size(); first++) {
      for (int later = first + 1; later < alone.size(); later++) {
        if (alone.get(first).field().equals(alone.get(later).field())) {
          assertThat(paid(alone.get(first), plan))
              .isLessThanOrEqualTo(paid(alone.get(later), plan));
        }
      }
    }
  }

  private static long paid(SlotSeeker seeker, Map<UUID, OpenSlot> plan) {
    OpenSlot slot = plan.get(seeker.refitCase());
    OptionalLong cost = slot == null ? OptionalLong.empty() : COST.of(seeker, slot, List.of());
    return cost.orElse(Long.MAX_VALUE);
  }

  @Property(tries = 300)
  void siblingsComeTogetherWhereADayHasRoomForAll(
      @ForAll("seekers") List<SlotSeeker> seekers,
      @ForAll @IntRange(min = 1, max = 3) int lanes,
      @ForAll @IntRange(min = 0, max = 2) int spare) {
    List<SlotSeeker> ready = new ArrayList<>();
    for (SlotSeeker s : seekers) {
      ready.add(
          new SlotSeeker(s.refitCase(), s.withoutHelmet(), s.openedAt(), "A", NOW, s.guardians()));
    }
    int steps = (ready.size() + lanes - 1) / lanes + spare;
    Map<UUID, OpenSlot> plan = plan(ready, row(new UUID(3, 1), "A", 1, steps, lanes));
    assertThat(plan).hasSize(ready.size());
    Map<Set<UUID>, List<SlotSeeker>> households =
        ready.stream()
            .filter(s -> !s.guardians().isEmpty())
            .collect(toMap(SlotSeeker::guardians, List::of, BookingPlanPropertyTest::joined));
    for (List<SlotSeeker> household : households.values()) {
      List<Instant> starts =
          household.stream().map(s -> plan.get(s.refitCase()).startsAt()).sorted().toList();
      long stepsApart = Duration.between(starts.getFirst(), starts.getLast()).toMinutes() / 15;
      assertThat(stepsApart).isLessThanOrEqualTo((household.size() + lanes - 2) / lanes);
    }
  }

  private static List<SlotSeeker> joined(List<SlotSeeker> some, List<SlotSeeker> more) {
    List<SlotSeeker> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }

  private static List<OpenSlot> row(UUID day, String field, int days, int steps, int lanes) {
    List<OpenSlot> slots = new ArrayList<>();
    for (int step = 0; step < steps; step++) {
      Instant starts = NOW.plusSeconds(86_400L * days + 900L * step);
      for (int lane = 1; lane <= lanes; lane++) {
        slots.add(new OpenSlot(day, field, starts, starts.plusSeconds(900), lane));
      }
    }
    return slots;
  }

  @Provide
  Arbitrary<List<SlotSeeker>> seekers() {
    Arbitrary<SlotSeeker> one =
        Combinators.combine(
                Arbitraries.integers().between(0, 5),
                Arbitraries.of("A", "B", "C"),
                Arbitraries.integers().between(0, 6),
                Arbitraries.integers().between(0, 8),
                Arbitraries.of(true, true, true, false))
            .as(
                (age, field, waitsDays, household, without) ->
                    new SlotSeeker(
                        new UUID(1, 0),
                        without,
                        NOW.minusSeconds(age),
                        field,
                        NOW.plusSeconds(86_400L * waitsDays),
                        household > 4 ? Set.of() : Set.of(new UUID(2, household))));
    return one.list().ofMaxSize(12).map(BookingPlanPropertyTest::numbered);
  }

  private static List<SlotSeeker> numbered(List<SlotSeeker> seekers) {
    List<SlotSeeker> numbered = new ArrayList<>();
    for (SlotSeeker s : seekers) {
      UUID id = new UUID(1, numbered.size());
      numbered.add(
          new SlotSeeker(
              id, s.withoutHelmet(), s.openedAt(), s.field(), s.earliest(), s.guardians()));
    }
    return numbered;
  }

  @Provide
  Arbitrary<List<OpenSlot>> slots() {
    Arbitrary<List<OpenSlot>> day =
        Combinators.combine(
                Arbitraries.of("A", "B", "C"),
                Arbitraries.integers().between(0, 9),
                Arbitraries.integers().between(1, 4),
                Arbitraries.integers().between(1, 2))
            .as((field, days, steps, lanes) -> row(new UUID(3, 0), field, days, steps, lanes));
    return day.list().ofMaxSize(4).map(BookingPlanPropertyTest::asDays);
  }

  private static List<OpenSlot> asDays(List<List<OpenSlot>> rows) {
    List<OpenSlot> all = new ArrayList<>();
    for (int day = 0; day < rows.size(); day++) {
      for (OpenSlot s : rows.get(day)) {
        all.add(new OpenSlot(new UUID(3, day), s.field(), s.startsAt(), s.endsAt(), s.lane()));
      }
    }
    return all;
  }
}
