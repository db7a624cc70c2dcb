package org.tapeline.notify.escalation;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.Urgency;

/**
 * What the association does when a notice is not confirmed ({@code escalation.json}). The times are
 * common practice, no source.
 *
 * @param rules by urgency; every one has a rule
 * @param together how matters for staff are told together
 */
public record EscalationPolicy(Map<Urgency, Rule> rules, Together together) {
  /** No step comes sooner: that is how soon a notice is first looked at. */
  public static final Duration SOONEST = Duration.ofMinutes(1);

  /** A "do not wear" that nobody confirmed is a person's business by then. */
  public static final Duration LATEST = Duration.ofDays(1);

  /** From when the time of a rule counts. */
  public enum From {
    RAISED,
    /** From when a channel first took it; before that nothing is due. */
    SENT
  }

  /**
   * @param after from {@link Rule#from()} on, {@link #SOONEST} or more
   */
  public record Timed(EscalationStep step, Duration after) {
    public Timed {
      if (after.compareTo(SOONEST) < 0) {
        throw new IllegalArgumentException("No step comes sooner than after " + SOONEST);
      }
    }
  }

  /**
   * @param steps in the order in which they are taken, each once, later ones later; may be empty
   */
  public record Rule(From from, List<Timed> steps) {
    public Rule {
      steps = List.copyOf(steps);
      for (int i = 1; i < steps.size(); i++) {
        Timed before = steps.get(i - 1);
        Timed step = steps.get(i);
        if (step.step().compareTo(before.step()) <= 0
            || step.after().compareTo(before.after()) <= 0) {
          throw new IllegalArgumentException(step.step() + " has to come after " + before.step());
        }
      }
    }
  }

  /**
   * @param waitFor how long the first matter waits for others, not negative
   * @param atMostEvery how much later the next notice to the same staff comes at least
   */
  public record Together(Duration waitFor, Duration atMostEvery) {
    public Together {
      if (waitFor.isNegative() || atMostEvery.compareTo(waitFor) < 0) {
        throw new IllegalArgumentException("Telling together: 0 <= waitFor <= atMostEvery");
      }
    }
  }

  public EscalationPolicy {
    rules = Map.copyOf(rules);
    if (!rules.keySet().equals(Set.of(Urgency.values()))) {
      throw new IllegalArgumentException("Every urgency needs a rule of escalation");
    }
    Rule stop = rules.get(Urgency.DO_NOT_WEAR);
    if (stop.from() != From.RAISED
        || stop.steps().isEmpty()
        || stop.steps().getLast().step() != EscalationStep.MANAGER
        || stop.steps().getLast().after().compareTo(LATEST) > 0) {
      throw new IllegalArgumentException(
          "A do-not-wear counts from raised and ends at the manager within " + LATEST);
    }
  }

  public Rule of(Urgency urgency) {
    return rules.get(urgency);
  }
}
