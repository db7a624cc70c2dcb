package org.tapeline.notify.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.tapeline.notify.notice.EscalationStep.FITTERS;
import static org.tapeline.notify.notice.EscalationStep.MANAGER;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.escalation.EscalationPolicy.From;
import org.tapeline.notify.escalation.EscalationPolicy.Rule;
import org.tapeline.notify.escalation.EscalationPolicy.Timed;
import org.tapeline.notify.escalation.EscalationPolicy.Together;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.Urgency;

@DisplayName("The policy of escalation")
class EscalationPolicyTest {
  private static final Together TOGETHER =
      new Together(Duration.ofMinutes(2), Duration.ofMinutes(30));

  private static Timed after(EscalationStep step, String time) {
    return new Timed(step, Duration.parse(time));
  }

  private static void isRefusedForDoNotWear(Rule rule) {
    Map<Urgency, Rule> rules = new EnumMap<>(EscalationPolicyFile.read().rules());
    rules.put(Urgency.DO_NOT_WEAR, rule);
    assertThatIllegalArgumentException().isThrownBy(() -> new EscalationPolicy(rules, TOGETHER));
  }

  @Test
  @DisplayName("that comes with the service has a rule for every urgency")
  void complete() {
    assertThat(EscalationPolicyFile.read().rules()).containsOnlyKeys(Urgency.values());
  }

  @Test
  @DisplayName("is refused when a do-not-wear could end at nobody, or a day later")
  void doNotWearEndsAtAPerson() {
    isRefusedForDoNotWear(new Rule(From.RAISED, List.of()));
    isRefusedForDoNotWear(new Rule(From.RAISED, List.of(after(FITTERS, "PT1H"))));
    isRefusedForDoNotWear(new Rule(From.SENT, List.of(after(MANAGER, "PT1H"))));
    isRefusedForDoNotWear(new Rule(From.RAISED, List.of(after(MANAGER, "PT25H"))));
  }

  @Test
  @DisplayName("is refused without a rule, with steps out of order, or sooner than anybody looks")
  void refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new EscalationPolicy(Map.of(), TOGETHER));
    List<Timed> backwards = List.of(after(MANAGER, "PT1H"), after(FITTERS, "PT2H"));
    assertThatIllegalArgumentException().isThrownBy(() -> new Rule(From.SENT, backwards));
    List<Timed> sooner = List.of(after(FITTERS, "PT2H"), after(MANAGER, "PT1H"));
    assertThatIllegalArgumentException().isThrownBy(() -> new Rule(From.SENT, sooner));
    assertThatIllegalArgumentException().isThrownBy(() -> after(FITTERS, "PT30S"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Together(Duration.ofMinutes(9), Duration.ofMinutes(8)));
  }
}
