package org.tapeline.notify.escalation;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.Urgency;

/**
 * What happened to a notice so far, as far as its escalation goes.
 *
 * @param sentAt when a channel first took it
 * @param undeliverableAt since when no channel can deliver it; empty while one may
 * @param over whether nobody has to answer any more: it was confirmed, the person was reached, it
 *     was cancelled, or its case is closed
 * @param done steps that were taken
 * @param possible steps for which there is a way: another channel, fitters with an address. The
 *     equipment manager can always be told.
 */
public record Happened(
    Urgency urgency,
    Instant raisedAt,
    Optional<Instant> sentAt,
    Optional<Instant> undeliverableAt,
    boolean over,
    Set<EscalationStep> done,
    Set<EscalationStep> possible) {

  public Happened {
    done = Set.copyOf(done);
    possible = Set.copyOf(possible);
  }

  /** Whether a step could be taken, were it its time. */
  boolean can(EscalationStep step) {
    return switch (step) {
      case SECOND_CHANNEL ->
          sentAt.isPresent() && undeliverableAt.isEmpty() && possible.contains(step);
      case FITTERS -> possible.contains(step);
      case MANAGER -> true;
    };
  }

  /** Steps are taken in their order: one that was passed over does not come later. */
  boolean isBehind(EscalationStep step) {
    return done.stream().anyMatch(d -> d.compareTo(step) >= 0);
  }
}
