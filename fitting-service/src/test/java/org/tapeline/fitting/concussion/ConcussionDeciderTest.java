package org.tapeline.fitting.concussion;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.concussion.ConcussionCommand.Clear;
import org.tapeline.fitting.concussion.ConcussionCommand.Suspect;
import org.tapeline.fitting.concussion.ConcussionDecider.State;
import org.tapeline.fitting.concussion.ConcussionDecision.Accepted;
import org.tapeline.fitting.concussion.ConcussionDecision.Refused;
import org.tapeline.fitting.concussion.ConcussionEvent.ConcussionSuspected;
import org.tapeline.fitting.concussion.ConcussionEvent.ReturnCleared;

@DisplayName("A player of whom a concussion is suspected")
class ConcussionDeciderTest {
  private static final UUID PLAYER = UUID.randomUUID();
  private static final Instant AT = Instant.parse("2026-09-05T16:20:00Z");
  private static final ConcussionSuspected SUSPECTED =
      new ConcussionSuspected(PLAYER, Optional.of("LV0001"), AT, "coach.hawks");
  private static final ReturnCleared CLEARED = new ReturnCleared(PLAYER, "fitter.north", AT);

  private static State given(ConcussionEvent... events) {
    State state = State.IN_PLAY;
    for (ConcussionEvent event : events) {
      state = ConcussionDecider.evolve(state, event);
    }
    return state;
  }

  private static Clear clear(boolean confirmed) {
    return new Clear(PLAYER, confirmed, "fitter.north", AT);
  }

  @Test
  @DisplayName("is out of play at once, and again as often as it is said")
  void suspected() {
    Suspect suspect = new Suspect(PLAYER, Optional.of("LV0001"), "coach.hawks", AT);
    assertThat(ConcussionDecider.decide(given(), suspect)).isEqualTo(new Accepted(SUSPECTED));
    assertThat(ConcussionDecider.decide(given(SUSPECTED), suspect))
        .isEqualTo(new Accepted(SUSPECTED));
    assertThat(given(SUSPECTED, SUSPECTED)).isEqualTo(State.OUT_OF_PLAY);
    assertThat(given(SUSPECTED, CLEARED, SUSPECTED)).isEqualTo(State.OUT_OF_PLAY);
  }

  @Test
  @DisplayName("is back when a person confirms that a licensed professional cleared the return")
  void cleared() {
    assertThat(ConcussionDecider.decide(given(SUSPECTED), clear(true)))
        .isEqualTo(new Accepted(CLEARED));
    assertThat(given(SUSPECTED, CLEARED)).isEqualTo(State.IN_PLAY);
  }

  @Test
  @DisplayName("is not back without that word, and nobody is back who was not out")
  void refused() {
    Refused notConfirmed = (Refused) ConcussionDecider.decide(given(SUSPECTED), clear(false));
    assertThat(notConfirmed.field()).isEqualTo("confirmed");
    assertThat(notConfirmed.sentence()).contains("licensed health-care professional");
    Refused notOut = (Refused) ConcussionDecider.decide(given(), clear(true));
    assertThat(notOut.code()).isEqualTo("not-out-of-play");
    assertThat(ConcussionDecider.decide(given(SUSPECTED, CLEARED), clear(true)))
        .isInstanceOf(Refused.class);
  }
}
