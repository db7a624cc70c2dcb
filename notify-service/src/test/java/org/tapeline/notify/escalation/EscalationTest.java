package org.tapeline.notify.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.notify.notice.EscalationStep.FITTERS;
import static org.tapeline.notify.notice.EscalationStep.MANAGER;
import static org.tapeline.notify.notice.EscalationStep.SECOND_CHANNEL;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.Urgency;

@DisplayName("When nobody confirms a notice")
class EscalationTest {
  private static final EscalationPolicy POLICY = EscalationPolicyFile.read();
  private static final Instant RAISED = Instant.parse("2026-09-12T17:00:00Z");
  private static final Set<EscalationStep> ALL = EnumSet.allOf(EscalationStep.class);

  private static Happened sent(Urgency urgency, Set<EscalationStep> done) {
    return happened(urgency, Optional.of(RAISED), Optional.empty(), false, done, ALL);
  }

  private static Happened happened(
      Urgency urgency,
      Optional<Instant> sent,
      Optional<Instant> undeliverable,
      boolean over,
      Set<EscalationStep> done,
      Set<EscalationStep> possible) {
    return new Happened(urgency, RAISED, sent, undeliverable, over, done, possible);
  }

  private static Optional<Escalation.Due> next(Happened happened) {
    return Escalation.next(happened, POLICY.of(happened.urgency()));
  }

  private static Optional<Escalation.Due> due(EscalationStep step, String after) {
    return Optional.of(new Escalation.Due(step, RAISED.plus(Duration.parse(after))));
  }

  @Test
  @DisplayName("do not wear goes to another channel, the fitters and the manager within hours")
  void doNotWear() {
    assertThat(next(sent(Urgency.DO_NOT_WEAR, Set.of()))).isEqualTo(due(SECOND_CHANNEL, "PT15M"));
    assertThat(next(sent(Urgency.DO_NOT_WEAR, Set.of(SECOND_CHANNEL))))
        .isEqualTo(due(FITTERS, "PT1H"));
    assertThat(next(sent(Urgency.DO_NOT_WEAR, Set.of(SECOND_CHANNEL, FITTERS))))
        .isEqualTo(due(MANAGER, "PT4H"));
    assertThat(next(sent(Urgency.DO_NOT_WEAR, ALL))).isEmpty();
  }

  @Test
  @DisplayName("a re-fit that is due soon has a day, from when it was sent")
  void soon() {
    Instant sent = RAISED.plus(Duration.ofHours(10));
    Happened held =
        happened(Urgency.SOON, Optional.empty(), Optional.empty(), false, Set.of(), ALL);
    assertThat(next(held)).isEmpty();
    Happened taken =
        happened(Urgency.SOON, Optional.of(sent), Optional.empty(), false, Set.of(), ALL);
    assertThat(next(taken)).isEqualTo(due(SECOND_CHANNEL, "PT18H"));
    assertThat(next(sent(Urgency.SOON, Set.of(SECOND_CHANNEL)))).isEqualTo(due(FITTERS, "PT24H"));
  }

  @Test
  @DisplayName("news of no haste is nobody's business")
  void normal() {
    assertThat(next(sent(Urgency.NORMAL, Set.of()))).isEmpty();
    assertThat(
            next(
                happened(
                    Urgency.NORMAL, Optional.empty(), Optional.of(RAISED), false, Set.of(), ALL)))
        .isEmpty();
  }

  @Test
  @DisplayName("and no channel can deliver it, people are told at once, and the manager later")
  void undeliverable() {
    for (Urgency urgency : Set.of(Urgency.DO_NOT_WEAR, Urgency.SOON)) {
      Happened given =
          happened(urgency, Optional.empty(), Optional.of(RAISED), false, Set.of(), ALL);
      assertThat(next(given)).isEqualTo(due(FITTERS, "PT0S"));
    }
    Happened told =
        happened(
            Urgency.DO_NOT_WEAR,
            Optional.empty(),
            Optional.of(RAISED),
            false,
            Set.of(FITTERS),
            ALL);
    assertThat(next(told)).isEqualTo(due(MANAGER, "PT3H"));
  }

  @Test
  @DisplayName("and it bounces long after it was raised, the clock does not start again")
  void bouncesLate() {
    Happened late =
        happened(
            Urgency.DO_NOT_WEAR,
            Optional.of(RAISED),
            Optional.of(RAISED.plus(Duration.ofHours(3))),
            false,
            Set.of(SECOND_CHANNEL),
            ALL);
    assertThat(next(late)).isEqualTo(due(FITTERS, "PT1H"));
  }

  @Test
  @DisplayName("and there is no other channel, the next step keeps its own time")
  void noSecondChannel() {
    Happened only =
        happened(
            Urgency.DO_NOT_WEAR,
            Optional.of(RAISED),
            Optional.empty(),
            false,
            Set.of(),
            Set.of(FITTERS));
    assertThat(next(only)).isEqualTo(due(FITTERS, "PT1H"));
  }

  @Test
  @DisplayName("and the field's fitters have no address, the manager is told in their place")
  void noFitters() {
    Happened nobody =
        happened(
            Urgency.DO_NOT_WEAR,
            Optional.of(RAISED),
            Optional.empty(),
            false,
            Set.of(SECOND_CHANNEL),
            Set.of());
    assertThat(next(nobody)).isEqualTo(due(MANAGER, "PT1H"));
  }

  @Test
  @DisplayName("and it is still on its way, it goes by no second channel, but to people in time")
  void neverSent() {
    Happened waits =
        happened(Urgency.DO_NOT_WEAR, Optional.empty(), Optional.empty(), false, Set.of(), ALL);
    assertThat(next(waits)).isEqualTo(due(FITTERS, "PT1H"));
  }

  @Test
  @DisplayName("steps that were passed over do not come later")
  void neverBack() {
    assertThat(next(sent(Urgency.DO_NOT_WEAR, Set.of(FITTERS)))).isEqualTo(due(MANAGER, "PT4H"));
    assertThat(next(sent(Urgency.DO_NOT_WEAR, Set.of(MANAGER)))).isEmpty();
  }

  @Test
  @DisplayName("but nobody has to any more, nothing follows")
  void over() {
    for (Urgency urgency : Urgency.values()) {
      assertThat(
              next(
                  happened(urgency, Optional.of(RAISED), Optional.of(RAISED), true, Set.of(), ALL)))
          .isEmpty();
    }
  }
}
