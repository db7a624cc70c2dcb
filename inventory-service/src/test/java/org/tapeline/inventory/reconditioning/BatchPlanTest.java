package org.tapeline.inventory.reconditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.reconditioning.SomeHelmets.AUGUST;
import static org.tapeline.inventory.reconditioning.SomeHelmets.BEFORE_BACK;
import static org.tapeline.inventory.reconditioning.SomeHelmets.MID_SEASON;
import static org.tapeline.inventory.reconditioning.SomeHelmets.NEXT_YEAR;
import static org.tapeline.inventory.reconditioning.SomeHelmets.POLICY;
import static org.tapeline.inventory.reconditioning.SomeHelmets.due;
import static org.tapeline.inventory.reconditioning.SomeHelmets.helmet;
import static org.tapeline.inventory.reconditioning.SomeHelmets.needs;
import static org.tapeline.inventory.reconditioning.SomeHelmets.notDue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.reconditioning.BatchPlan.Step;
import org.tapeline.inventory.reconditioning.BatchPlan.Way;

@DisplayName("A plan for the reconditioner")
class BatchPlanTest {
  private static final LocalDate DECEMBER = LocalDate.of(2026, 12, 1);

  @Test
  @DisplayName("sends in the season what can be spared, the first to lapse first")
  void spared() {
    BatchPlan plan =
        plan(
            AUGUST,
            needs(2),
            due("LATER", "DEPOT", MID_SEASON.plusDays(5)),
            due("SOONER", "DEPOT", MID_SEASON),
            notDue("OTHER", "DEPOT"));
    assertThat(way(plan, "SOONER")).isEqualTo(Way.GOES);
    assertThat(way(plan, "LATER")).isEqualTo(Way.WAITS);
    assertThat(why(plan, "LATER")).contains("2 of its size stay usable in all and 2 are needed");
  }

  @Test
  @DisplayName("keeps at each place what is needed there, though there are enough in all")
  void atEachPlace() {
    BatchPlan plan =
        plan(
            AUGUST,
            needs(1, "NORTH", 1),
            due("ATNORTH", "NORTH", MID_SEASON),
            notDue("ATDEPOT", "DEPOT"));
    assertThat(way(plan, "ATNORTH")).isEqualTo(Way.WAITS);
    assertThat(why(plan, "ATNORTH")).contains("at NORTH");
  }

  @Test
  @DisplayName("never counts on a helmet that lapses before it could be back: it goes")
  void lapsesFirst() {
    BatchPlan plan = plan(AUGUST, needs(5), due("LAPSING", "DEPOT", BEFORE_BACK));
    assertThat(way(plan, "LAPSING")).isEqualTo(Way.GOES);
    assertThat(why(plan, "LAPSING")).contains("2026-09-10", "2026-10-01");
    assertThat(plan.shelves().getFirst().usable()).isZero();
    assertThat(plan.shelves().getFirst().isShort()).isTrue();
  }

  @Test
  @DisplayName("spares nothing where no forecast says how many are needed")
  void notKnown() {
    BatchPlan plan = plan(AUGUST, SomeHelmets.notKnown(), due("ONE", "DEPOT", MID_SEASON));
    assertThat(way(plan, "ONE")).isEqualTo(Way.WAITS);
    assertThat(why(plan, "ONE")).contains("no forecast");
  }

  @Test
  @DisplayName("leaves for after the season what can be worn through it")
  void lasts() {
    BatchPlan plan = plan(AUGUST, needs(0), due("GOOD", "DEPOT", NEXT_YEAR));
    assertThat(way(plan, "GOOD")).isEqualTo(Way.WAITS);
    assertThat(why(plan, "GOOD")).contains("2026-11-15");
  }

  @Test
  @DisplayName("sends all that is due when it is back before the next season")
  void offSeason() {
    BatchPlan plan =
        plan(DECEMBER, needs(9), due("A", "DEPOT", NEXT_YEAR), due("B", "NORTH", BEFORE_BACK));
    assertThat(plan.inSeason()).isFalse();
    assertThat(plan.going()).hasSize(2);
  }

  @Test
  @DisplayName("takes the weeks before a season for season when what goes would be back too late")
  void justBeforeTheSeason() {
    assertThat(plan(LocalDate.of(2026, 6, 20), needs(9)).inSeason()).isFalse();
    assertThat(plan(LocalDate.of(2026, 6, 21), needs(9)).inSeason()).isTrue();
  }

  @Test
  @DisplayName("waits for what a player has, what is kept for one, and what is on hold")
  void notOnTheShelf() {
    BatchPlan plan =
        plan(
            DECEMBER,
            needs(0),
            due(helmet("WORN", "NORTH", "issued"), MID_SEASON),
            due(helmet("KEPT", "NORTH", "reserved"), MID_SEASON),
            due(helmet("HELD", "NORTH", "held"), MID_SEASON));
    assertThat(plan.going()).isEmpty();
    assertThat(why(plan, "WORN")).contains("last day was 2026-10-20", "Take it back now");
    assertThat(why(plan, "HELD")).contains("on hold");
  }

  @Test
  @DisplayName("says by when a player needs another helmet")
  void worn() {
    BatchPlan plan =
        plan(
            AUGUST,
            needs(0),
            due(helmet("ENDING", "NORTH", "issued"), MID_SEASON),
            due(helmet("LASTING", "NORTH", "issued"), NEXT_YEAR));
    assertThat(why(plan, "ENDING")).contains("Give the player another by 2026-10-20");
    assertThat(why(plan, "LASTING")).contains("when it is given back");
  }

  @Test
  @DisplayName("sends what is in quarantine, which helps nobody here")
  void quarantined() {
    BatchPlan plan = plan(AUGUST, needs(9), due(helmet("BAD", "NORTH", "quarantined"), NEXT_YEAR));
    assertThat(way(plan, "BAD")).isEqualTo(Way.GOES);
  }

  @Test
  @DisplayName("does not pay for a helmet that is too old before it is back")
  void tooOld() {
    Standing old =
        new Standing(
            helmet("OLD", "DEPOT", "available"),
            BEFORE_BACK,
            BEFORE_BACK,
            due("OLD", "DEPOT", BEFORE_BACK).reasons());
    BatchPlan plan = plan(AUGUST, needs(0), old);
    assertThat(way(plan, "OLD")).isEqualTo(Way.RETIRE);
    assertThat(why(plan, "OLD")).contains("retire");
  }

  @Test
  @DisplayName("says nothing of helmets that are not due or have gone already")
  void notDueOrGone() {
    BatchPlan plan =
        plan(
            DECEMBER,
            needs(0),
            notDue("FINE", "DEPOT"),
            due(helmet("GONE", "DEPOT", "at-reconditioner"), MID_SEASON));
    assertThat(plan.steps()).isEmpty();
  }

  private static BatchPlan plan(LocalDate on, Needs needs, Standing... fleet) {
    return BatchPlan.of(on, List.of(fleet), needs, POLICY);
  }

  private static Step step(BatchPlan plan, String tag) {
    return plan.steps().stream()
        .filter(s -> s.standing().helmet().tag().equals(tag))
        .findFirst()
        .orElseThrow();
  }

  private static Way way(BatchPlan plan, String tag) {
    return step(plan, tag).way();
  }

  private static String why(BatchPlan plan, String tag) {
    return step(plan, tag).why();
  }
}
