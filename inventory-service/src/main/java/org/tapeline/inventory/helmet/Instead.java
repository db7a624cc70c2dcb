package org.tapeline.inventory.helmet;

import org.tapeline.inventory.helmet.Decision.Refused;
import org.tapeline.inventory.helmet.Helmet.State;
import org.tapeline.inventory.helmet.Lifecycle.Step;

/** What to do instead of a step that the table of moves does not allow. */
public final class Instead {
  static final String LOOK = "Look at the helmet's page for what can be done.";

  private Instead() {}

  /**
   * A sentence for whoever has the helmet in hand.
   *
   * @throws IllegalArgumentException when the step is allowed
   */
  public static String of(State state, Step step) {
    if (Lifecycle.allows(state, step)) {
      throw new IllegalArgumentException(step + " is allowed when " + state.says());
    }
    if (step == Step.ORDER || step == Step.RECEIVE) {
      return "This tag is on another helmet already. Check the tag.";
    }
    return switch (state) {
      case UNKNOWN -> "Check the tag, or receive the helmet first.";
      case ORDERED -> "Receive it first.";
      case AVAILABLE, ISSUED, QUARANTINED, HELD -> atHand(step);
      case AT_RECONDITIONER -> "Take it back in its batch first.";
      case RETIRED -> "A retired helmet never comes back. Take another one.";
    };
  }

  private static String atHand(Step step) {
    return switch (step) {
      case RETURN -> "By the records no player has it. Move it to where it is.";
      case INSPECT -> "Only a helmet in quarantine is inspected. Report its damage first.";
      case SEND_OUT -> "Take it back from its player first.";
      case COME_BACK -> "By the records it was not sent out. Check the tag.";
      // Allowed, or never refused.
      case ORDER, RECEIVE, ISSUE, MOVE, REPORT_DAMAGE, SET_ASIDE, HOLD, FREE, RECERTIFY, RETIRE ->
          LOOK;
    };
  }

  /** The reason, and what to do instead. */
  static Refused refused(Helmet helmet, Step step, String what) {
    String state =
        switch (helmet.state()) {
          case UNKNOWN -> "not known here";
          case HELD -> "on hold";
          case AT_RECONDITIONER -> "at the reconditioner";
          case ORDERED, AVAILABLE, ISSUED, QUARANTINED, RETIRED -> helmet.says();
        };
    return new Refused(
        "helmet-" + state.replace(' ', '-'),
        "The helmet "
            + helmet.tag()
            + " is "
            + state
            + " and cannot be "
            + what
            + ". "
            + of(helmet.state(), step));
  }
}
