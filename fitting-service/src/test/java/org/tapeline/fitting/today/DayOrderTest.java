package org.tapeline.fitting.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.recheck.Trigger;
import org.tapeline.fitting.signoff.WearState;
import org.tapeline.fitting.today.DayOrder.Group;
import org.tapeline.fitting.today.DayOrder.Rank;
import org.tapeline.fitting.today.DayOrder.Seen;

@DisplayName("A fitter's day")
class DayOrderTest {
  private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
  private static final Instant MIDNIGHT = Instant.parse("2026-09-12T05:00:00Z");
  private static final Instant NOW = Instant.parse("2026-09-12T15:00:00Z");
  private static final int SOON = 2;

  private static Optional<Group> group(String status, String code, Instant... due) {
    return rank(status, code, due).map(Rank::group);
  }

  private static Optional<Rank> rank(String status, String code, Instant... due) {
    List<Check> checks =
        List.of(due).stream()
            .map(at -> new Check(Trigger.WEEKLY, at, at, Optional.empty(), "said"))
            .toList();
    WearState state = new WearState(status, code, "said", "why");
    return DayOrder.rank(new Seen(UUID.randomUUID(), state, checks, CHICAGO), NOW, SOON);
  }

  @Test
  @DisplayName("has who must not wear a helmet, apart from who never had one")
  void doNotWear() {
    for (String status : List.of("withdrawn", "lapsed", "out-of-play")) {
      assertThat(group(status, "do-not-wear")).contains(Group.DO_NOT_WEAR);
    }
    assertThat(group("never-fitted", "do-not-wear")).contains(Group.NEVER_FITTED);
    assertThat(group("unknown", "unknown")).contains(Group.NOT_KNOWN);
  }

  @Test
  @DisplayName("tells overdue from due today by the day at the field")
  void overdue() {
    assertThat(group("check-due", "check-today", MIDNIGHT.minusMillis(1))).contains(Group.OVERDUE);
    assertThat(group("check-due", "check-today", MIDNIGHT)).contains(Group.DUE_TODAY);
    assertThat(group("check-due", "check-today", NOW, MIDNIGHT.minusMillis(1)))
        .contains(Group.OVERDUE);
  }

  @Test
  @DisplayName("has what becomes due later today, and within the days that are soon")
  void ahead() {
    assertThat(group("signed-off", "may-wear", NOW.plusSeconds(60))).contains(Group.DUE_TODAY);
    Instant tomorrow = MIDNIGHT.plus(Duration.ofDays(1));
    assertThat(group("signed-off", "may-wear", tomorrow)).contains(Group.DUE_SOON);
    Instant after = MIDNIGHT.plus(Duration.ofDays(3));
    assertThat(group("signed-off", "may-wear", after.minusMillis(1))).contains(Group.DUE_SOON);
    assertThat(group("signed-off", "may-wear", after)).isEmpty();
    assertThat(group("signed-off", "may-wear")).isEmpty();
  }

  @Test
  @DisplayName("begins with the greatest risk, within it with what has waited longest")
  void order() {
    List<Rank> expected =
        List.of(
            rank("withdrawn", "do-not-wear").orElseThrow(),
            rank("unknown", "unknown").orElseThrow(),
            rank("check-due", "check-today", NOW.minus(Duration.ofDays(3))).orElseThrow(),
            rank("check-due", "check-today", NOW.minus(Duration.ofDays(2))).orElseThrow(),
            rank("check-due", "check-today", NOW).orElseThrow(),
            rank("signed-off", "may-wear", NOW.plusSeconds(60)).orElseThrow(),
            rank("never-fitted", "do-not-wear").orElseThrow(),
            rank("signed-off", "may-wear", NOW.plus(Duration.ofDays(1))).orElseThrow());
    List<Rank> shuffled = new ArrayList<>(expected);
    Collections.shuffle(shuffled, new Random(1));
    assertThat(shuffled.stream().sorted().toList()).isEqualTo(expected);
  }
}
