package org.tapeline.fitting.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.evidence.SomeEvidence.AT;
import static org.tapeline.fitting.evidence.SomeEvidence.PLAYER;
import static org.tapeline.fitting.evidence.SomeEvidence.SESSION;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.session.FitSessionEvent;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckPassed;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;

@DisplayName("The evidence of a session")
class EvidenceTest {
  private static final Conditions CONDITIONS =
      new Conditions(Optional.of(24.0), Optional.empty(), Optional.empty());

  private final List<FitSessionEvent> session = new ArrayList<>();
  private Instant now = AT;

  private Instant next() {
    now = now.plusSeconds(30);
    return now;
  }

  private void puts(String tag) {
    session.add(new HelmetTried(SESSION, PLAYER, tag, "model-a", "youth-medium", next()));
  }

  private void answers(String check, String result, Optional<String> finding, double mm) {
    session.add(
        new CheckRecorded(
            SESSION, PLAYER, check, result, Optional.empty(), finding, Optional.of(mm), next()));
  }

  private void mends(String check, String remedy) {
    session.add(
        new AdjustmentMade(
            SESSION, PLAYER, check, remedy, Optional.empty(), List.of(check), next()));
  }

  private void passes(String tag, String check) {
    session.add(
        new FitPassed(
            SESSION,
            PLAYER,
            "NORTH",
            "U10-HAWKS",
            tag,
            "model-a",
            "youth-medium",
            "fitter.north",
            "youth-football",
            1,
            List.of(),
            CONDITIONS,
            List.of(new CheckPassed(check, "pass", now)),
            next()));
  }

  @Test
  @DisplayName("has each answer that counted with what was measured last, and all that was tried")
  void whole() {
    puts("LV0001");
    answers("brow-clearance", "fail", Optional.of("low"), 12);
    mends("brow-clearance", "add-air");
    puts("LV0002");
    answers("brow-clearance", "pass", Optional.empty(), 25);
    Instant counted = now;
    passes("LV0002", "brow-clearance");

    Evidence evidence = Evidence.of(session).orElseThrow();
    assertThat(evidence.answers())
        .containsExactly(new Evidence.Answer("brow-clearance", "pass", Optional.of(25.0), counted));
    assertThat(evidence.tag()).isEqualTo("LV0002");
    assertThat(evidence.at()).isEqualTo(now);
    assertThat(evidence.steps())
        .hasExactlyElementsOfTypes(
            Evidence.HelmetOn.class,
            Evidence.Failed.class,
            Evidence.Remedied.class,
            Evidence.HelmetOn.class);
  }

  @Test
  @DisplayName("is none while it is open, and none of a session without a fit")
  void none() {
    puts("LV0001");
    assertThat(Evidence.of(session)).isEmpty();
    session.add(new SessionAbandoned(SESSION, PLAYER, "weather", next()));
    assertThat(Evidence.of(session)).isEmpty();
    assertThat(Evidence.of(List.of())).isEmpty();
  }
}
