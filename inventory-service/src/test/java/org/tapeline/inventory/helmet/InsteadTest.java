package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.helmet.Helmet.State;
import org.tapeline.inventory.helmet.Lifecycle.Step;

@DisplayName("A step that is refused")
class InsteadTest {
  /** Told by an event, or without any effect. */
  private static final Set<Step> NEVER_REFUSED =
      EnumSet.of(Step.ISSUE, Step.SET_ASIDE, Step.HOLD, Step.FREE);

  @Test
  @DisplayName("has a way out that is meant for it, in every state")
  void everyRefusal() {
    for (State state : State.values()) {
      for (Step step : EnumSet.complementOf(EnumSet.copyOf(NEVER_REFUSED))) {
        if (!Lifecycle.allows(state, step)) {
          assertThat(Instead.of(state, step)).as(state + " " + step).isNotEqualTo(Instead.LOOK);
        }
      }
    }
  }

  @Test
  @DisplayName("of an ordered helmet waits for its receipt, of one at the reconditioner its return")
  void away() {
    assertThat(Instead.of(State.ORDERED, Step.MOVE)).isEqualTo("Receive it first.");
    assertThat(Instead.of(State.AT_RECONDITIONER, Step.MOVE))
        .isEqualTo("Take it back in its batch first.");
  }

  @Test
  @DisplayName("is asked for only where the table does not allow it")
  void allowed() {
    assertThatThrownBy(() -> Instead.of(State.AVAILABLE, Step.MOVE))
        .hasMessage("MOVE is allowed when available");
  }
}
