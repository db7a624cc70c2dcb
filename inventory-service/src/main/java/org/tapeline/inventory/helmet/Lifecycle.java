package org.tapeline.inventory.helmet;

import static org.tapeline.inventory.helmet.Helmet.State.AT_RECONDITIONER;
import static org.tapeline.inventory.helmet.Helmet.State.AVAILABLE;
import static org.tapeline.inventory.helmet.Helmet.State.HELD;
import static org.tapeline.inventory.helmet.Helmet.State.ISSUED;
import static org.tapeline.inventory.helmet.Helmet.State.ORDERED;
import static org.tapeline.inventory.helmet.Helmet.State.QUARANTINED;
import static org.tapeline.inventory.helmet.Helmet.State.RETIRED;
import static org.tapeline.inventory.helmet.Helmet.State.UNKNOWN;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.tapeline.inventory.helmet.Helmet.State;

/**
 * The table of moves: in which state of a helmet what can be done. What is not in it is refused.
 */
public final class Lifecycle {
  private Lifecycle() {}

  /** What can be done with a helmet. */
  public enum Step {
    ORDER(UNKNOWN),
    RECEIVE(UNKNOWN, ORDERED),
    ISSUE(AVAILABLE, ISSUED),
    RETURN(ISSUED),
    MOVE(AVAILABLE, ISSUED, QUARANTINED, HELD),
    REPORT_DAMAGE(AVAILABLE, ISSUED, QUARANTINED, HELD),
    SET_ASIDE(AVAILABLE, ISSUED, HELD),
    INSPECT(QUARANTINED),
    HOLD(AVAILABLE, ISSUED, QUARANTINED, HELD, AT_RECONDITIONER),
    FREE(QUARANTINED, HELD, AT_RECONDITIONER),
    SEND_OUT(AVAILABLE, QUARANTINED, HELD),
    COME_BACK(AT_RECONDITIONER),
    RECERTIFY(AVAILABLE, ISSUED, QUARANTINED, HELD, AT_RECONDITIONER),
    RETIRE(ORDERED, AVAILABLE, ISSUED, QUARANTINED, HELD, AT_RECONDITIONER);

    private final EnumSet<State> from;

    Step(State first, State... others) {
      from = EnumSet.of(first, others);
    }
  }

  private static final Map<State, Set<Step>> STEPS = new EnumMap<>(State.class);

  static {
    for (State state : State.values()) {
      STEPS.put(state, EnumSet.noneOf(Step.class));
    }
    for (Step step : Step.values()) {
      step.from.forEach(state -> STEPS.get(state).add(step));
    }
    if (!STEPS.get(RETIRED).isEmpty()) {
      throw new IllegalStateException("A retired helmet never comes back");
    }
  }

  /** What can be done in that state; nothing once it is retired. */
  public static Set<Step> stepsFrom(State state) {
    return Set.copyOf(STEPS.get(state));
  }

  static boolean allows(State state, Step step) {
    return STEPS.get(state).contains(step);
  }
}
