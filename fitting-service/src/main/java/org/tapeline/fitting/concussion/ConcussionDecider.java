package org.tapeline.fitting.concussion;

import org.tapeline.fitting.concussion.ConcussionCommand.Clear;
import org.tapeline.fitting.concussion.ConcussionCommand.Suspect;
import org.tapeline.fitting.concussion.ConcussionDecision.Accepted;
import org.tapeline.fitting.concussion.ConcussionDecision.Refused;
import org.tapeline.fitting.concussion.ConcussionEvent.ConcussionSuspected;
import org.tapeline.fitting.concussion.ConcussionEvent.ReturnCleared;

/**
 * Who is out of play. A suspicion is enough and needs no second opinion; only a person's word that
 * a licensed health-care professional cleared the return ends it: no time that goes by, no helmet
 * that fits.
 */
public final class ConcussionDecider {
  private ConcussionDecider() {}

  /** Whether the player is out of play. */
  public enum State {
    IN_PLAY,
    OUT_OF_PLAY
  }

  public static ConcussionDecision decide(State state, ConcussionCommand command) {
    return switch (command) {
      case Suspect c -> new Accepted(new ConcussionSuspected(c.player(), c.tag(), c.at(), c.by()));
      case Clear c -> clear(state, c);
    };
  }

  private static ConcussionDecision clear(State state, Clear c) {
    if (state == State.IN_PLAY) {
      return new Refused("not-out-of-play", "", "This player is not out of play.");
    }
    if (!c.confirmed()) {
      return new Refused(
          "not-confirmed",
          "confirmed",
          "Tick the box to confirm that a licensed health-care professional cleared the return.");
    }
    return new Accepted(new ReturnCleared(c.player(), c.by(), c.at()));
  }

  public static State evolve(State state, ConcussionEvent event) {
    return switch (event) {
      case ConcussionSuspected e -> State.OUT_OF_PLAY;
      case ReturnCleared e -> State.IN_PLAY;
    };
  }
}
