package org.tapeline.fitting.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.recheck.RecheckRules.Causes;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.recheck.RecheckRules.Field;
import org.tapeline.fitting.recheck.RecheckRules.Fit;

@DisplayName("The re-checks of a sign-off")
class RecheckRulesTest {
  private static final RecheckPlan PLAN = RecheckPlans.builtIn();
  private static final Instant SIGNED = Instant.parse("2026-08-01T15:00:00Z");
  private static final Instant NOW = SIGNED.plus(Duration.ofDays(2));
  private static final Fit FIT = fit(21.0, 240.0);

  private static Fit fit(Double celsius, Double metres) {
    return new Fit(SIGNED, Optional.ofNullable(celsius), Optional.ofNullable(metres));
  }

  private static Field field(Double celsius, Instant at, Double metres) {
    return new Field(
        Optional.ofNullable(celsius), Optional.ofNullable(at), Optional.ofNullable(metres));
  }

  private static Field at(double celsius, double metres) {
    return field(celsius, NOW, metres);
  }

  private static Causes causes(Instant hair, Instant edge, Instant remeasure, Instant damage) {
    return new Causes(
        Optional.ofNullable(hair),
        Optional.ofNullable(edge),
        Optional.ofNullable(remeasure),
        Optional.ofNullable(damage),
        Field.UNKNOWN);
  }

  private static List<Check> air(Fit fit, Field field) {
    Causes none = Causes.NONE;
    Causes causes =
        new Causes(
            none.hairChangedAt(),
            none.nearEdgeAt(),
            none.remeasureDueAt(),
            none.cosmeticDamageAt(),
            field);
    List<Check> checks = RecheckRules.checks(PLAN, fit, causes, NOW);
    assertThat(checks.getFirst().trigger()).isEqualTo(Trigger.WEEKLY);
    return checks.subList(1, checks.size());
  }

  private static void due(Trigger trigger, List<Check> checks) {
    assertThat(checks).extracting(Check::trigger).containsExactly(trigger);
    assertThat(checks.getFirst().due(NOW)).isTrue();
    assertThat(checks.getFirst().lapsed(NOW.plus(Duration.ofDays(99)))).isFalse();
  }

  @Test
  @DisplayName("are the weekly one, whatever else is")
  void weekly() {
    Check weekly = RecheckRules.checks(PLAN, FIT, Causes.NONE, NOW).getFirst();
    assertThat(weekly.trigger()).isEqualTo(Trigger.WEEKLY);
    assertThat(weekly.dueAt()).isEqualTo(SIGNED.plus(Duration.ofDays(7)));
    assertThat(weekly.due(weekly.dueAt().minusMillis(1))).isFalse();
    assertThat(weekly.due(weekly.dueAt())).isTrue();
    Instant lapse = SIGNED.plus(Duration.ofDays(10));
    assertThat(weekly.lapsed(lapse.minusMillis(1))).isFalse();
    assertThat(weekly.lapsed(lapse)).isTrue();
  }

  @Test
  @DisplayName("come with each cause since the sign-off, and not with an earlier one")
  void causes() {
    Instant since = SIGNED;
    Instant before = SIGNED.minusMillis(1);
    List<Trigger> all =
        List.of(
            Trigger.WEEKLY,
            Trigger.HAIR_CHANGED,
            Trigger.NEAR_EDGE,
            Trigger.REMEASURE_DUE,
            Trigger.COSMETIC_DAMAGE);
    assertThat(RecheckRules.checks(PLAN, FIT, causes(since, since, since, since), NOW))
        .extracting(Check::trigger)
        .isEqualTo(all);
    assertThat(RecheckRules.checks(PLAN, FIT, causes(before, before, before, before), NOW))
        .extracting(Check::trigger)
        .containsExactly(Trigger.WEEKLY);
  }

  @Test
  @DisplayName("count their days from the cause")
  void fromTheCause() {
    Instant cut = SIGNED.plusSeconds(60);
    Check hair = RecheckRules.checks(PLAN, FIT, causes(cut, null, null, null), NOW).get(1);
    assertThat(hair.cause()).isEqualTo(cut);
    assertThat(hair.dueAt()).isEqualTo(cut);
    assertThat(hair.lapsesAt()).contains(cut.plus(Duration.ofDays(3)));
  }

  @Test
  @DisplayName("come with cold, heat, height and depth, from the plan's change of room on")
  void air() {
    due(Trigger.COLDER, air(FIT, at(4, 240)));
    due(Trigger.HOTTER, air(FIT, at(38, 240)));
    due(Trigger.HIGHER, air(FIT, at(21, 1000)));
    due(Trigger.LOWER, air(fit(21.0, 1000.0), at(21, 240)));
    // 5 % of 294.15 K are 14.7 K.
    assertThat(air(FIT, at(6.4, 240))).isEmpty();
    due(Trigger.COLDER, air(FIT, at(6.2, 240)));
    assertThat(air(FIT, at(35.6, 240))).isEmpty();
    due(Trigger.HOTTER, air(FIT, at(35.8, 240)));
    assertThat(air(FIT, at(21, 240))).isEmpty();
  }

  @Test
  @DisplayName("weigh warmth and height together, and blame the one that does more")
  void together() {
    assertThat(air(FIT, at(-4, 1000))).isEmpty();
    due(Trigger.HIGHER, air(FIT, at(25, 800)));
    due(Trigger.HOTTER, air(FIT, at(34, 340)));
    due(Trigger.COLDER, air(fit(21.0, 440.0), at(9, 240)));
  }

  @Test
  @DisplayName("do not guess what was not recorded, but know the height alone")
  void unknown() {
    assertThat(air(fit(null, 240.0), at(-20, 240))).isEmpty();
    assertThat(air(fit(21.0, null), at(21, 3000))).isEmpty();
    assertThat(air(fit(null, null), Field.UNKNOWN)).isEmpty();
    due(Trigger.HIGHER, air(fit(null, 240.0), field(null, null, 1000.0)));
  }

  @Test
  @DisplayName("leave out a temperature of the field that is too old to count")
  void old() {
    Instant oldest = NOW.minus(PLAN.conditionsHold());
    due(Trigger.COLDER, air(FIT, field(4.0, oldest, 240.0)));
    assertThat(air(FIT, field(4.0, oldest.minusMillis(1), 240.0))).isEmpty();
    assertThat(air(FIT, field(4.0, null, 240.0))).isEmpty();
  }

  @Test
  @DisplayName("take cold that was there before the sign-off for there at the sign-off")
  void coldBefore() {
    Fit late = new Fit(NOW.minusSeconds(60), Optional.of(21.0), Optional.of(240.0));
    Check check = air(late, field(4.0, NOW.minusSeconds(3600), 240.0)).getFirst();
    assertThat(check.cause()).isEqualTo(late.at());
    assertThat(air(FIT, at(4, 240)).getFirst().cause()).isEqualTo(NOW);
  }
}
