package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.fitday.FitDayCommand.Announce;
import org.tapeline.fitting.fitday.FitDayCommand.Cancel;
import org.tapeline.fitting.fitday.FitDayCommand.Move;
import org.tapeline.fitting.fitday.FitDayDecision.Accepted;
import org.tapeline.fitting.fitday.FitDayDecision.Refused;
import org.tapeline.fitting.fitday.FitDayDecision.Unchanged;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayCancelled;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayMoved;

@DisplayName("A fit day")
class FitDayDeciderTest {
  private static final UUID DAY = UUID.randomUUID();
  private static final Instant NOW = Instant.parse("2026-08-01T15:06:00Z");
  private static final Instant STARTS = Instant.parse("2026-08-04T22:30:00Z");
  private static final Instant ENDS = Instant.parse("2026-08-05T01:00:00Z");
  private static final FitDayAnnounced ANNOUNCED =
      new FitDayAnnounced(DAY, "NORTH", STARTS, ENDS, "America/Chicago", 2, 15, NOW);

  private static Announce announce(Instant starts, Duration open, int fitters, int minutes) {
    return new Announce(
        DAY,
        new Opening("NORTH", starts, starts.plus(open), "America/Chicago", fitters, minutes),
        NOW);
  }

  private static Announce announce(Duration open, int minutes) {
    return announce(STARTS, open, 2, minutes);
  }

  private static FitDayDecision when(FitDayCommand command, FitDayEvent... given) {
    FitDay state = FitDay.NONE;
    for (FitDayEvent event : given) {
      state = FitDayDecider.evolve(state, event);
    }
    return FitDayDecider.decide(state, command);
  }

  private static FitDayEvent then(FitDayDecision decision) {
    assertThat(decision).isInstanceOf(Accepted.class);
    return ((Accepted) decision).event();
  }

  private static Refused refused(FitDayDecision decision) {
    assertThat(decision).isInstanceOf(Refused.class);
    assertThat(((Refused) decision).sentence()).isNotBlank();
    return (Refused) decision;
  }

  @Test
  @DisplayName("is announced with its hours, its fitters and the length of a fit")
  void announced() {
    Announce announce = announce(Duration.between(STARTS, ENDS), 15);
    assertThat(then(when(announce))).isEqualTo(ANNOUNCED);
  }

  @Test
  @DisplayName("is announced once, also when it was cancelled")
  void once() {
    Announce announce = announce(Duration.ofHours(2), 15);
    assertThat(refused(when(announce, ANNOUNCED)).code()).isEqualTo("announced-before");
    assertThat(refused(when(announce, ANNOUNCED, new FitDayCancelled(DAY, NOW))).code())
        .isEqualTo("announced-before");
  }

  @Test
  @DisplayName("lies ahead, by a second at least")
  void ahead() {
    Refused now = refused(when(announce(NOW, Duration.ofHours(2), 2, 15)));
    assertThat(now.code()).isEqualTo("past");
    assertThat(now.field()).isEqualTo("date");
    assertThat(then(when(announce(NOW.plusSeconds(1), Duration.ofHours(2), 2, 15)))).isNotNull();
  }

  @Test
  @DisplayName("has 1 to 50 fitters")
  void fitters() {
    for (int fitters : new int[] {1, 50}) {
      FitDayEvent event = then(when(announce(STARTS, Duration.ofHours(2), fitters, 15)));
      assertThat(((FitDayAnnounced) event).fitters()).isEqualTo(fitters);
    }
    for (int fitters : new int[] {0, 51}) {
      assertThat(refused(when(announce(STARTS, Duration.ofHours(2), fitters, 15))).field())
          .isEqualTo("fitters");
    }
  }

  @Test
  @DisplayName("has fits of 5 to 120 minutes")
  void minutes() {
    for (int minutes : new int[] {5, 120}) {
      FitDayEvent event = then(when(announce(Duration.ofHours(2), minutes)));
      assertThat(((FitDayAnnounced) event).minutesPerFit()).isEqualTo(minutes);
    }
    for (int minutes : new int[] {4, 121}) {
      assertThat(refused(when(announce(Duration.ofHours(3), minutes))).field())
          .isEqualTo("minutesPerFit");
    }
  }

  @Test
  @DisplayName("has room for one fit at least and is over within 14 hours")
  void hours() {
    assertThat(then(when(announce(Duration.ofMinutes(15), 15)))).isNotNull();
    assertThat(then(when(announce(Duration.ofHours(14), 15)))).isNotNull();
    for (Duration open :
        new Duration[] {
          Duration.ofMinutes(15).minusSeconds(1),
          Duration.ofHours(-1),
          Duration.ofHours(14).plusSeconds(1)
        }) {
      assertThat(refused(when(announce(open, 15))).field()).as("%s", open).isEqualTo("closes");
    }
  }

  @Test
  @DisplayName("is cancelled until its end, once")
  void cancelled() {
    Instant last = ENDS.minusMillis(1);
    assertThat(then(when(new Cancel(DAY, last), ANNOUNCED)))
        .isEqualTo(new FitDayCancelled(DAY, last));
    assertThat(refused(when(new Cancel(DAY, ENDS), ANNOUNCED)).code()).isEqualTo("over");
    assertThat(refused(when(new Cancel(DAY, NOW), ANNOUNCED, new FitDayCancelled(DAY, NOW))).code())
        .isEqualTo("cancelled-before");
    assertThat(refused(when(new Cancel(DAY, NOW))).code()).isEqualTo("not-announced");
  }

  private static Move move(Opening opening, Instant at) {
    return new Move(DAY, opening, at);
  }

  private static Opening river(int fitters) {
    return new Opening(
        "RIVER", STARTS.plusSeconds(3600), ENDS.plusSeconds(3600), "America/Chicago", fitters, 20);
  }

  @Test
  @DisplayName("is moved to other hours, another field and other fitters, as often as wanted")
  void moved() {
    FitDayMoved moved = FitDayMoved.of(DAY, river(3), NOW);
    assertThat(then(when(move(river(3), NOW), ANNOUNCED))).isEqualTo(moved);
    assertThat(when(move(river(3), NOW), ANNOUNCED, moved)).isEqualTo(new Unchanged());
    assertThat(when(move(ANNOUNCED.opening(), NOW), ANNOUNCED)).isEqualTo(new Unchanged());
    assertThat(then(when(move(ANNOUNCED.opening(), NOW), ANNOUNCED, moved))).isNotNull();
  }

  @Test
  @DisplayName("is moved until the end that it has now, and never to what could not be announced")
  void notMoved() {
    assertThat(refused(when(move(river(3), ENDS), ANNOUNCED)).code()).isEqualTo("over");
    FitDayMoved later = FitDayMoved.of(DAY, river(3), NOW);
    assertThat(then(when(new Cancel(DAY, ENDS), ANNOUNCED, later))).isNotNull();
    assertThat(refused(when(move(river(0), NOW), ANNOUNCED)).field()).isEqualTo("fitters");
    Instant started = STARTS.plusSeconds(7200);
    assertThat(refused(when(move(river(3), started), ANNOUNCED)).field()).isEqualTo("date");
    assertThat(refused(when(move(river(3), NOW))).code()).isEqualTo("not-announced");
    FitDayCancelled cancelled = new FitDayCancelled(DAY, NOW);
    assertThat(refused(when(move(river(3), NOW), ANNOUNCED, cancelled)).code())
        .isEqualTo("cancelled-before");
  }
}
