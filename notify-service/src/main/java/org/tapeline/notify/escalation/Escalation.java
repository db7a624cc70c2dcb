package org.tapeline.notify.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.tapeline.notify.escalation.EscalationPolicy.From;
import org.tapeline.notify.escalation.EscalationPolicy.Rule;
import org.tapeline.notify.escalation.EscalationPolicy.Timed;
import org.tapeline.notify.notice.EscalationStep;

/**
 * Who is asked next when a notice is not confirmed. What no channel can deliver is people's
 * business at once: its clock is put forward to the first step that tells people. Where a step has
 * nobody, the next one that tells people takes its time.
 */
public final class Escalation {
  private Escalation() {}

  /** A step and when it is to be taken, which may be past. */
  public record Due(EscalationStep step, Instant at) {}

  /** The next step; empty when none is left, or none before something else happens. */
  public static Optional<Due> next(Happened happened, Rule rule) {
    if (happened.over()) {
      return Optional.empty();
    }
    return startsAt(happened, rule).flatMap(from -> next(happened, rule, from));
  }

  private static Optional<Due> next(Happened happened, Rule rule, Instant from) {
    Duration inherited = null;
    for (Timed timed : rule.steps()) {
      EscalationStep step = timed.step();
      if (happened.isBehind(step)) {
        continue;
      }
      Duration after = step.reachesPeople() && inherited != null ? inherited : timed.after();
      if (happened.can(step)) {
        return Optional.of(new Due(step, from.plus(after)));
      }
      inherited = step.reachesPeople() ? after : inherited;
    }
    return Optional.empty();
  }

  /** From when the rule's times count for this notice. */
  private static Optional<Instant> startsAt(Happened happened, Rule rule) {
    Optional<Instant> usual =
        rule.from() == From.RAISED ? Optional.of(happened.raisedAt()) : happened.sentAt();
    Optional<Instant> putForward =
        happened
            .undeliverableAt()
            .flatMap(at -> firstForPeople(rule).map(step -> at.minus(step.after())));
    if (usual.isEmpty() || putForward.isEmpty()) {
      return usual.or(() -> putForward);
    }
    return usual.get().isBefore(putForward.get()) ? usual : putForward;
  }

  private static Optional<Timed> firstForPeople(Rule rule) {
    return rule.steps().stream().filter(t -> t.step().reachesPeople()).findFirst();
  }
}
