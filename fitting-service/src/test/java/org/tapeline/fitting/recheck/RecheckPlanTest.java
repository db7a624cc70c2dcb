package org.tapeline.fitting.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A re-check plan")
class RecheckPlanTest {

  private static void refused(int due, int lapsed) {
    assertThatThrownBy(() -> new RecheckPlan("plan", 1, due, lapsed, "for the test"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName("counts days of 24 hours since the sign-off, also when the clocks change")
  void days() {
    RecheckPlan plan = new RecheckPlan("plan", 1, 7, 10, "for the test");
    Instant signedOff = Instant.parse("2026-10-30T23:30:00Z");
    assertThat(plan.dueAt(signedOff)).isEqualTo("2026-11-06T23:30:00Z");
    assertThat(plan.lapsesAt(signedOff)).isEqualTo("2026-11-09T23:30:00Z");
  }

  @Test
  @DisplayName("by which a sign-off would hold for ever, or lapse before it is due, is refused")
  void refused() {
    refused(0, 10);
    refused(32, 40);
    refused(7, 7);
    refused(7, 6);
    refused(7, 63);
    assertThat(new RecheckPlan("plan", 1, 31, 62, "for the test").lapsedAfterDays()).isEqualTo(62);
    assertThat(new RecheckPlan("plan", 1, 1, 2, "for the test").dueAfterDays()).isEqualTo(1);
  }

  @Test
  @DisplayName("that is delivered looks at each fit weekly")
  void delivered() {
    assertThat(RecheckPlans.builtIn().dueAfterDays()).isEqualTo(7);
    assertThat(RecheckPlans.builtIn().source()).isNotBlank();
  }
}
