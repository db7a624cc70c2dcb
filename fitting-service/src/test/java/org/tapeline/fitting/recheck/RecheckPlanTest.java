package org.tapeline.fitting.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.recheck.RecheckPlan.Rule;

@DisplayName("A re-check plan")
class RecheckPlanTest {
  private static final RecheckPlan DELIVERED = RecheckPlans.builtIn();

  private static Rule rule(Trigger trigger, int due, Integer lapses, Double percent) {
    return new Rule(
        trigger.code(),
        "title",
        due,
        Optional.ofNullable(lapses),
        Optional.ofNullable(percent),
        "said",
        "for the test");
  }

  private static void refused(Trigger trigger, int due, Integer lapses, Double percent) {
    assertThatIllegalArgumentException()
        .as("%s %s %s %s", trigger, due, lapses, percent)
        .isThrownBy(() -> rule(trigger, due, lapses, percent));
  }

  private static void refused(int version, int hours, int soon, List<Rule> rules) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RecheckPlan("plan", version, hours, soon, rules));
  }

  @Test
  @DisplayName("counts days of 24 hours since the cause, also when the clocks change")
  void days() {
    Instant signedOff = Instant.parse("2026-10-30T23:30:00Z");
    assertThat(DELIVERED.rule(Trigger.WEEKLY).dueAt(signedOff)).isEqualTo("2026-11-06T23:30:00Z");
    assertThat(DELIVERED.rule(Trigger.WEEKLY).lapsesAt(signedOff))
        .contains(Instant.parse("2026-11-09T23:30:00Z"));
  }

  @Test
  @DisplayName("by which a sign-off would hold for ever, or lapse before it is due, is refused")
  void forEver() {
    refused(Trigger.WEEKLY, 0, 10, null);
    refused(Trigger.WEEKLY, 32, 40, null);
    refused(Trigger.WEEKLY, 7, 7, null);
    refused(Trigger.WEEKLY, 7, 63, null);
    refused(Trigger.WEEKLY, 7, null, null);
    refused(Trigger.HAIR_CHANGED, 0, null, null);
    refused(Trigger.HAIR_CHANGED, -1, 3, null);
    refused(Trigger.HAIR_CHANGED, 0, 0, null);
    assertThat(rule(Trigger.WEEKLY, 31, 62, null).lapsesAfterDays()).contains(62);
    assertThat(rule(Trigger.WEEKLY, 1, 2, null).dueAfterDays()).isEqualTo(1);
    assertThat(rule(Trigger.HAIR_CHANGED, 0, 1, null).dueAfterDays()).isZero();
  }

  @Test
  @DisplayName("that lets a player go on after a suspected concussion is refused")
  void concussion() {
    refused(Trigger.SUSPECTED_CONCUSSION, 1, 2, null);
    refused(Trigger.SUSPECTED_CONCUSSION, 0, 1, null);
    refused(Trigger.SUSPECTED_CONCUSSION, 0, null, null);
    assertThat(rule(Trigger.SUSPECTED_CONCUSSION, 0, 0, null).lapsesAfterDays()).contains(0);
  }

  @Test
  @DisplayName("says for air, and only for air, how much the room has to change")
  void air() {
    refused(Trigger.COLDER, 0, null, null);
    refused(Trigger.COLDER, 0, null, 0.9);
    refused(Trigger.HIGHER, 0, null, 20.1);
    refused(Trigger.HAIR_CHANGED, 0, 3, 5.0);
    assertThat(rule(Trigger.LOWER, 0, null, 1.0).roomChangePercent()).contains(1.0);
    assertThat(rule(Trigger.HOTTER, 0, 5, 20.0).lapsesAfterDays()).contains(5);
  }

  @Test
  @DisplayName("with an unknown trigger, or a rule without words or source, is refused")
  void words() {
    Optional<Integer> three = Optional.of(3);
    Optional<Double> none = Optional.empty();
    for (List<String> words :
        List.of(
            List.of("full-moon", "title", "said", "source"),
            List.of("hair-changed", " ", "said", "source"),
            List.of("hair-changed", "title", "", "source"),
            List.of("hair-changed", "title", "said", ""))) {
      assertThatIllegalArgumentException()
          .isThrownBy(
              () ->
                  new Rule(words.get(0), words.get(1), 0, three, none, words.get(2), words.get(3)));
    }
  }

  @Test
  @DisplayName("has one rule for each trigger, a version, and sensible hours and days")
  void complete() {
    List<Rule> rules = DELIVERED.rules();
    refused(1, 12, 2, rules.subList(1, rules.size()));
    List<Rule> twice = new ArrayList<>(rules);
    twice.add(rules.getFirst());
    refused(1, 12, 2, twice);
    refused(0, 12, 2, rules);
    refused(1, 0, 2, rules);
    refused(1, 49, 2, rules);
    refused(1, 12, -1, rules);
    refused(1, 12, 8, rules);
    assertThat(new RecheckPlan("plan", 1, 48, 7, rules).rules()).hasSameSizeAs(Trigger.values());
    assertThat(new RecheckPlan("plan", 1, 1, 0, rules).dueSoonDays()).isZero();
  }

  @Test
  @DisplayName("that is delivered looks at each fit weekly, and names a source for every figure")
  void delivered() {
    assertThat(DELIVERED.rule(Trigger.WEEKLY).dueAfterDays()).isEqualTo(7);
    assertThat(DELIVERED.rules()).allSatisfy(rule -> assertThat(rule.source()).isNotBlank());
  }
}
