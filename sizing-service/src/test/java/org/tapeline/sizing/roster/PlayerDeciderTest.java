package org.tapeline.sizing.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.advice.SizeAdvice;
import org.tapeline.sizing.advice.SizeChances;
import org.tapeline.sizing.advice.SizeChances.Chance;
import org.tapeline.sizing.growth.HeadForAge;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.reading.Measurement.Method;
import org.tapeline.sizing.reading.Reading;
import org.tapeline.sizing.roster.PlayerCommand.Advise;
import org.tapeline.sizing.roster.PlayerCommand.PutOnRoster;
import org.tapeline.sizing.roster.PlayerCommand.RecordHead;
import org.tapeline.sizing.roster.PlayerCommand.TakeOffRoster;
import org.tapeline.sizing.roster.PlayerDecider.Decision;
import org.tapeline.sizing.roster.PlayerEvent.HeadMeasured;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;
import org.tapeline.sizing.roster.PlayerEvent.PlayerEnrolled;
import org.tapeline.sizing.roster.PlayerEvent.PlayerLeft;
import org.tapeline.sizing.roster.PlayerEvent.PlayerMoved;
import org.tapeline.sizing.roster.PlayerEvent.ReadingTaken;
import org.tapeline.sizing.roster.PlayerEvent.SizeAdvised;
import org.tapeline.sizing.roster.PlayerEvent.SizeChance;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("A player")
class PlayerDeciderTest {
  private static final UUID PLAYER = UUID.fromString("0198f0c2-1111-7000-8000-000000000001");
  private static final Instant NOON = Instant.parse("2026-08-01T12:00:00Z");
  private static final PlayerEnrolled ENROLLED =
      new PlayerEnrolled(PLAYER, "LV-0001", "U10-HAWKS", "NORTH");

  @Test
  @DisplayName("on the roster for the first time is enrolled")
  void enrolled() {
    assertThat(given().when(onRoster("U10-HAWKS", "NORTH"))).containsExactly(ENROLLED);
  }

  @Test
  @DisplayName("on the roster as before changes nothing")
  void sameRoster() {
    assertThat(given(ENROLLED).when(onRoster("U10-HAWKS", "NORTH"))).isEmpty();
  }

  @Test
  @DisplayName("in another team, or at another field, has moved")
  void moved() {
    assertThat(given(ENROLLED).when(onRoster("U12-HAWKS", "NORTH")))
        .containsExactly(new PlayerMoved(PLAYER, "U12-HAWKS", "NORTH"));
    assertThat(given(ENROLLED).when(onRoster("U10-HAWKS", "SOUTH")))
        .containsExactly(new PlayerMoved(PLAYER, "U10-HAWKS", "SOUTH"));
  }

  @Test
  @DisplayName("who has moved is compared with the new team")
  void movedBack() {
    PlayerMoved south = new PlayerMoved(PLAYER, "U10-HAWKS", "SOUTH");
    assertThat(given(ENROLLED, south).when(onRoster("U10-HAWKS", "SOUTH"))).isEmpty();
    assertThat(given(ENROLLED, south).when(onRoster("U10-HAWKS", "NORTH"))).hasSize(1);
  }

  @Test
  @DisplayName("taken off the roster has left, once")
  void left() {
    PlayerLeft left = new PlayerLeft(PLAYER);
    assertThat(given(ENROLLED).when(new TakeOffRoster(PLAYER))).containsExactly(left);
    assertThat(given(ENROLLED, left).when(new TakeOffRoster(PLAYER))).isEmpty();
    assertThat(given().when(new TakeOffRoster(PLAYER))).isEmpty();
  }

  @Test
  @DisplayName("who left and comes back is enrolled again, also in the same team")
  void comesBack() {
    assertThat(given(ENROLLED, new PlayerLeft(PLAYER)).when(onRoster("U10-HAWKS", "NORTH")))
        .containsExactly(ENROLLED);
  }

  @Test
  @DisplayName("is measured: the event holds the readings, the value, the method, who and when")
  void measured() {
    assertThat(given(ENROLLED).when(head(534, false)))
        .containsExactly(
            new HeadMeasured(
                PLAYER,
                List.of(new ReadingTaken("534 mm", 534), new ReadingTaken("534 mm", 534)),
                534,
                2.8,
                "mean-of-two",
                Optional.of("braids"),
                false,
                "fitter.north",
                Optional.empty(),
                NOON));
  }

  @Test
  @DisplayName("who is not on the roster, or left it, is not measured")
  void notOnRoster() {
    assertThat(given().refused(head(534, false)).code()).isEqualTo("not-on-roster");
    assertThat(given(ENROLLED, new PlayerLeft(PLAYER)).refused(head(534, false)).sentence())
        .isEqualTo("This player is not on the roster.");
  }

  @Test
  @DisplayName("whose head seems to have shrunk by more than 5 mm is measured again")
  void shrunk() {
    Decision.Refused refused = given(ENROLLED, headWas(540)).refused(head(534, false));
    assertThat(refused.code()).isEqualTo("smaller-than-before");
    assertThat(refused.sentence()).contains("21 1/4 in", "6 mm smaller", "confirm");
  }

  @Test
  @DisplayName("whose smaller head was confirmed is measured, and the confirmation is kept")
  void shrunkAndConfirmed() {
    assertThat(given(ENROLLED, headWas(540)).when(head(534, true)))
        .singleElement()
        .isInstanceOfSatisfying(
            HeadMeasured.class,
            e -> {
              assertThat(e.confirmed()).isTrue();
              assertThat(e.confirmedBy()).contains("fitter.north");
            });
  }

  @Test
  @DisplayName("whose usual value was confirmed all the same has nothing confirmed")
  void nothingToConfirm() {
    assertThat(given(ENROLLED).when(head(534, true)))
        .singleElement()
        .isInstanceOfSatisfying(HeadMeasured.class, e -> assertThat(e.confirmed()).isFalse());
  }

  @Test
  @DisplayName("whose head is rarer than one in a thousand for the age is measured again")
  void unusualForAge() {
    RecordHead large = head(600, false, Optional.of(forAge(0.9995, 600)));
    Decision.Refused refused = given(ENROLLED).refused(large);
    assertThat(refused.code()).isEqualTo("unusual-for-age");
    assertThat(refused.sentence()).contains("600 mm", "9 years", "confirm");
    RecordHead confirmed = head(600, true, Optional.of(forAge(0.9995, 600)));
    assertThat(given(ENROLLED).when(confirmed)).hasSize(1);
    RecordHead usual = head(570, false, Optional.of(forAge(0.99, 570)));
    assertThat(given(ENROLLED).when(usual)).hasSize(1);
  }

  @Test
  @DisplayName("whose head is both rare and smaller than before is told both reasons")
  void bothDoubts() {
    RecordHead small = head(440, false, Optional.of(forAge(0.0001, 440)));
    Decision.Refused refused = given(ENROLLED, headWas(534)).refused(small);
    assertThat(refused.sentence()).contains("smaller than 999 of 1000", "94 mm smaller");
  }

  @Test
  @DisplayName("may measure up to 5 mm less than before, or any more, without a question")
  void withinTheTolerance() {
    assertThat(given(ENROLLED, headWas(540)).when(head(535, false))).hasSize(1);
    assertThat(given(ENROLLED, headWas(540)).when(head(560, false))).hasSize(1);
  }

  @Test
  @DisplayName("is compared with the newest measurement, not with an older one")
  void newestCounts() {
    assertThat(given(ENROLLED, headWas(560), headWas(540)).when(head(538, false))).hasSize(1);
  }

  @Test
  @DisplayName("who was measured is advised a size")
  void advised() {
    assertThat(given(ENROLLED, headWas(534)).when(advise(1)))
        .containsExactly(new SizeAdvised(PLAYER, 534, List.of(modelAdvice(1))));
  }

  @Test
  @DisplayName("who was never measured, or for whom there is no chart, is not advised")
  void nothingToAdvise() {
    assertThat(given(ENROLLED).when(advise(1))).isEmpty();
    assertThat(given(ENROLLED, headWas(534)).when(new Advise(PLAYER, List.of()))).isEmpty();
  }

  @Test
  @DisplayName("who left is not advised any more")
  void leftIsNotAdvised() {
    PlayerLeft left = new PlayerLeft(PLAYER);
    assertThat(given(ENROLLED, headWas(534), left).when(advise(1))).isEmpty();
  }

  @Test
  @DisplayName("is advised anew only when the advice changes")
  void sameAdvice() {
    SizeAdvised before = new SizeAdvised(PLAYER, 534, List.of(modelAdvice(1)));
    assertThat(given(ENROLLED, headWas(534), before).when(advise(1))).isEmpty();
    assertThat(given(ENROLLED, headWas(534), before).when(advise(2))).hasSize(1);
  }

  private static PutOnRoster onRoster(String team, String field) {
    return new PutOnRoster(PLAYER, "LV-0001", team, field);
  }

  private static HeadForAge forAge(double below, double mm) {
    return new HeadForAge(below, 9.4, new Millimetres(mm), "KiGGS 2003-2006");
  }

  private static RecordHead head(double mm, boolean confirmed) {
    return head(mm, confirmed, Optional.empty());
  }

  private static RecordHead head(double mm, boolean confirmed, Optional<HeadForAge> forAge) {
    Reading reading = new Reading(Math.round(mm) + " mm", new Millimetres(mm));
    Measurement measurement =
        new Measurement(
            List.of(reading, reading),
            new Millimetres(mm),
            new Millimetres(2.8),
            Method.MEAN_OF_TWO);
    return new RecordHead(
        PLAYER, measurement, forAge, Hair.BRAIDS, confirmed, "fitter.north", NOON);
  }

  private static HeadMeasured headWas(double mm) {
    return (HeadMeasured) given(ENROLLED).when(head(mm, false)).getFirst();
  }

  private static Advise advise(int chartVersion) {
    return new Advise(
        PLAYER,
        List.of(
            new SizeAdvice(
                "model-a",
                chartVersion,
                Optional.of("youth-medium"),
                Optional.empty(),
                SizeAdvice.Outcome.IN_SIZE,
                "It lies in Youth medium.",
                new SizeChances(
                    List.of(new Chance("youth-small", 0.004), new Chance("youth-medium", 0.996)),
                    0,
                    0))));
  }

  private static ModelAdvice modelAdvice(int chartVersion) {
    return new ModelAdvice(
        "model-a",
        chartVersion,
        Optional.of("youth-medium"),
        Optional.empty(),
        "in-size",
        "It lies in Youth medium.",
        List.of(new SizeChance("youth-medium", 1)));
  }

  private static Given given(PlayerEvent... events) {
    PlayerState state = PlayerState.NEW;
    for (PlayerEvent event : events) {
      state = PlayerDecider.evolve(state, event);
    }
    return new Given(state);
  }

  /** What has happened so far. */
  private record Given(PlayerState state) {
    List<PlayerEvent> when(PlayerCommand command) {
      return switch (PlayerDecider.decide(state, command)) {
        case Decision.Accepted accepted -> accepted.events();
        case Decision.Refused refused -> throw new AssertionError(refused.sentence());
      };
    }

    Decision.Refused refused(PlayerCommand command) {
      return switch (PlayerDecider.decide(state, command)) {
        case Decision.Accepted accepted -> throw new AssertionError("Accepted: " + accepted);
        case Decision.Refused refused -> refused;
      };
    }
  }
}
