package org.tapeline.sizing.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.growth.HeadForAge;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.reading.Reading;
import org.tapeline.sizing.roster.PlayerCommand.Advise;
import org.tapeline.sizing.roster.PlayerCommand.CorrectHead;
import org.tapeline.sizing.roster.PlayerCommand.RecordHead;
import org.tapeline.sizing.roster.PlayerCommand.WithdrawHead;
import org.tapeline.sizing.roster.PlayerDecider.Decision;
import org.tapeline.sizing.roster.PlayerEvent.HeadCorrected;
import org.tapeline.sizing.roster.PlayerEvent.HeadMeasured;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;
import org.tapeline.sizing.roster.PlayerEvent.PlayerEnrolled;
import org.tapeline.sizing.roster.PlayerEvent.PlayerLeft;
import org.tapeline.sizing.roster.PlayerEvent.ReadingTaken;
import org.tapeline.sizing.roster.PlayerEvent.SizeAdvised;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("A recorded head")
class CorrectionDeciderTest {
  private static final UUID PLAYER = UUID.fromString("0198f0c2-1111-7000-8000-000000000001");
  private static final Instant NOON = Instant.parse("2026-08-01T12:00:00Z");
  private static final PlayerEnrolled ENROLLED =
      new PlayerEnrolled(PLAYER, "LV-0001", "U10-HAWKS", "NORTH");
  private static final ModelAdvice MEDIUM =
      new ModelAdvice(
          "model-a",
          1,
          Optional.of("youth-medium"),
          Optional.empty(),
          "in-size",
          "It lies in Youth medium.",
          List.of());

  @Test
  @DisplayName("is corrected: the event holds the new readings, which head, why, who and when")
  void corrected() {
    assertThat(given(ENROLLED, head(574)).when(correct(2, 534)))
        .containsExactly(
            new HeadCorrected(
                PLAYER,
                2,
                false,
                Optional.of(
                    List.of(new ReadingTaken("534 mm", 534), new ReadingTaken("534 mm", 534))),
                Optional.of(534.0),
                Optional.of(2.8),
                Optional.of("mean-of-two"),
                Optional.of("braids"),
                false,
                "misread",
                "fitter.north",
                NOON));
  }

  @Test
  @DisplayName("of another player is withdrawn, without readings")
  void withdrawn() {
    assertThat(given(ENROLLED, head(574)).when(withdraw(2)))
        .containsExactly(HeadCorrected.withdrawn(PLAYER, 2, "fitter.north", NOON));
  }

  @Test
  @DisplayName("counts with its corrected value when the next one is compared")
  void correctedCounts() {
    assertThat(given(ENROLLED, head(574), corrected(2, 534)).when(record(534))).hasSize(1);
  }

  @Test
  @DisplayName("counts no more once it is withdrawn: the one before does")
  void withdrawnCountsNoMore() {
    State state = given(ENROLLED, head(534), head(574), withdrawn(3));
    assertThat(state.when(record(534))).hasSize(1);
    assertThat(state.refused(record(528)).code()).isEqualTo("smaller-than-before");
  }

  @Test
  @DisplayName("may be corrected again")
  void again() {
    assertThat(given(ENROLLED, head(574), corrected(2, 534)).when(correct(2, 536))).hasSize(1);
    assertThat(given(ENROLLED, head(574), corrected(2, 534)).when(withdraw(2))).hasSize(1);
  }

  @Test
  @DisplayName("that was withdrawn is not corrected: the player is measured again")
  void withdrawnStays() {
    State state = given(ENROLLED, head(574), withdrawn(2));
    assertThat(state.refused(correct(2, 534)).code()).isEqualTo("withdrawn");
    assertThat(state.refused(withdraw(2)).code()).isEqualTo("withdrawn");
  }

  @Test
  @DisplayName("must be there: what is no measurement is not corrected")
  void noSuchHead() {
    assertThat(given(ENROLLED, head(574)).refused(correct(1, 534)).code())
        .isEqualTo("no-such-head");
    assertThat(given(ENROLLED, head(574)).refused(withdraw(3)).code()).isEqualTo("no-such-head");
  }

  @Test
  @DisplayName("of somebody else, or too long ago, is not corrected")
  void notOffered() {
    CorrectHead correct = correct(2, 534, false, false, Optional.empty());
    assertThat(given(ENROLLED, head(574)).refused(correct).code())
        .isEqualTo("not-yours-to-correct");
    WithdrawHead withdraw = new WithdrawHead(PLAYER, 2, false, "fitter.north", NOON);
    assertThat(given(ENROLLED, head(574)).refused(withdraw).sentence()).contains("last 20");
  }

  @Test
  @DisplayName("of a player who left the roster stays as it is")
  void left() {
    State state = given(ENROLLED, head(574), new PlayerLeft(PLAYER));
    assertThat(state.refused(correct(2, 534)).code()).isEqualTo("not-on-roster");
    assertThat(state.refused(withdraw(2)).code()).isEqualTo("not-on-roster");
  }

  @Test
  @DisplayName("is compared with the head before it, not with itself, before it is corrected")
  void doubt() {
    State state = given(ENROLLED, head(540), head(574));
    assertThat(state.when(correct(3, 541))).hasSize(1);
    assertThat(state.refused(correct(3, 530)).sentence()).contains("10 mm smaller");
    assertThat(state.when(correct(2, 500))).hasSize(1);
  }

  @Test
  @DisplayName("is corrected to a value that is rare for the age only when that is confirmed")
  void confirmed() {
    Optional<HeadForAge> rare =
        Optional.of(new HeadForAge(0.9999, 9.4, new Millimetres(640), "KiGGS 2003-2006"));
    State state = given(ENROLLED, head(574));
    assertThat(state.refused(correct(2, 640, true, false, rare)).code())
        .isEqualTo("unusual-for-age");
    assertThat(state.when(correct(2, 640, true, true, rare)))
        .singleElement()
        .isInstanceOfSatisfying(HeadCorrected.class, e -> assertThat(e.confirmed()).isTrue());
  }

  @Test
  @DisplayName("that was the only one takes its advice with it, once")
  void adviceWithdrawn() {
    SizeAdvised advised = new SizeAdvised(PLAYER, 574, List.of(MEDIUM));
    SizeAdvised none = new SizeAdvised(PLAYER, 574, List.of());
    Advise advise = new Advise(PLAYER, List.of());
    assertThat(given(ENROLLED, head(574), advised, withdrawn(2)).when(advise))
        .containsExactly(none);
    assertThat(given(ENROLLED, head(574), advised, withdrawn(2), none).when(advise)).isEmpty();
  }

  private static RecordHead record(double mm) {
    return new RecordHead(
        PLAYER, measurement(mm), Optional.empty(), Hair.BRAIDS, false, "fitter.north", NOON);
  }

  private static HeadMeasured head(double mm) {
    return (HeadMeasured) given(ENROLLED).when(record(mm)).getFirst();
  }

  private static CorrectHead correct(long version, double mm) {
    return correct(version, mm, true, false, Optional.empty());
  }

  private static CorrectHead correct(
      long version, double mm, boolean offered, boolean confirmed, Optional<HeadForAge> forAge) {
    return new CorrectHead(
        PLAYER,
        version,
        offered,
        measurement(mm),
        forAge,
        Hair.BRAIDS,
        confirmed,
        CorrectionReason.MISREAD,
        "fitter.north",
        NOON);
  }

  private static WithdrawHead withdraw(long version) {
    return new WithdrawHead(PLAYER, version, true, "fitter.north", NOON);
  }

  private static HeadCorrected corrected(long version, double mm) {
    return (HeadCorrected) given(ENROLLED, head(574)).when(correct(version, mm)).getFirst();
  }

  private static HeadCorrected withdrawn(long version) {
    return HeadCorrected.withdrawn(PLAYER, version, "fitter.north", NOON);
  }

  private static Measurement measurement(double mm) {
    Reading reading = new Reading(Math.round(mm) + " mm", new Millimetres(mm));
    return new Measurement(
        List.of(reading, reading),
        new Millimetres(mm),
        new Millimetres(2.8),
        Measurement.Method.MEAN_OF_TWO);
  }

  private static State given(PlayerEvent... events) {
    PlayerState state = PlayerState.NEW;
    for (PlayerEvent event : events) {
      state = PlayerDecider.evolve(state, event);
    }
    return new State(state);
  }

  /** What has happened so far. */
  private record State(PlayerState state) {
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
