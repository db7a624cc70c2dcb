package org.tapeline.notify.escalation;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.Urgency;

/** What happened to notices, as their rows tell it; in the caller's transaction. */
final class WhatHappened {
  private WhatHappened() {}

  /** The steps that were taken, by notice; none for a notice of which none was. */
  static Map<UUID, Set<EscalationStep>> stepsOf(Collection<UUID> notices) {
    return EscalationRow.of(notices).stream()
        .collect(
            Collectors.groupingBy(
                taken -> taken.notice,
                Collectors.mapping(taken -> EscalationStep.of(taken.step), Collectors.toSet())));
  }

  /**
   * @param open whether something of it is still to be answered
   */
  static Happened to(
      NoticeRow row, boolean open, Set<EscalationStep> done, Set<EscalationStep> possible) {
    return new Happened(
        Urgency.of(row.urgency),
        row.raisedAt,
        Optional.ofNullable(row.sentAt),
        row.state.equals("undeliverable") ? Optional.of(row.peopleAt) : Optional.empty(),
        !open || row.state.equals("acknowledged") || row.state.equals("cancelled"),
        done,
        possible);
  }

  /** When the next step comes at the soonest: were the notice open, and a way for each step. */
  static Optional<Escalation.Due> soonest(
      NoticeRow row, Set<EscalationStep> done, EscalationPolicy policy) {
    return Escalation.next(
        to(row, true, done, EnumSet.allOf(EscalationStep.class)),
        policy.of(Urgency.of(row.urgency)));
  }
}
