package org.tapeline.notify.escalation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.notify.channel.Reach;
import org.tapeline.notify.notice.Decision;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTryRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.staff.Staff;

/** Takes the steps that are due. All that follows from one notice is one transaction. */
@ApplicationScoped
public class Escalations {
  private final Notices notices;
  private final Surroundings surroundings;
  private final StaffMatters matters;
  private final Reach reach;
  private final Staff staff;
  private final EscalationPolicy policy;
  private final Clock clock;

  Escalations(
      Notices notices,
      Surroundings surroundings,
      StaffMatters matters,
      Reach reach,
      Staff staff,
      EscalationPolicy policy,
      Clock clock) {
    this.notices = notices;
    this.surroundings = surroundings;
    this.matters = matters;
    this.reach = reach;
    this.staff = staff;
    this.policy = policy;
    this.clock = clock;
  }

  /** Does what is due with a notice; nothing when another process did it meanwhile. */
  @Transactional
  void look(UUID notice, Instant now) {
    NoticeRow row = NoticeRow.locked(notice);
    if (row.escalateAt != null && !row.escalateAt.isAfter(now)) {
      look(row, now);
    }
  }

  /**
   * Who could be told, and how.
   *
   * @param channel one that was not used yet
   * @param fitters those of the fields that have an address
   */
  private record Ahead(Optional<String> channel, List<String> fitters) {}

  /** A step that was due long ago is taken now, and the ones after it that are due as well. */
  private void look(NoticeRow row, Instant now) {
    Set<EscalationStep> done = EnumSet.noneOf(EscalationStep.class);
    done.addAll(WhatHappened.stepsOf(List.of(row.notice)).getOrDefault(row.notice, Set.of()));
    Optional<Escalation.Due> next = WhatHappened.soonest(row, done, policy);
    // What is around a notice is asked for only when a step could be due at all.
    if (isDue(next, now)) {
      boolean open = surroundings.isOpen(row.notice);
      Ahead ahead = ahead(row);
      next = next(row, open, done, ahead);
      while (isDue(next, now)) {
        take(next.get().step(), row, ahead);
        done.add(next.get().step());
        next = next(row, open, done, ahead);
      }
    }
    row.escalateAt = next.map(Escalation.Due::at).orElse(null);
  }

  private static boolean isDue(Optional<Escalation.Due> step, Instant now) {
    return step.isPresent() && !step.get().at().isAfter(now);
  }

  private Ahead ahead(NoticeRow row) {
    Optional<String> channel =
        surroundings.hasNewer(row.notice)
            ? Optional.empty()
            : reach.next(
                row.recipient, Urgency.of(row.urgency), NoticeTryRow.channelsOf(row.notice));
    List<String> fitters =
        surroundings.fieldsOf(row.notice).stream()
            .flatMap(field -> staff.fitters(field).stream())
            .toList();
    return new Ahead(channel, fitters);
  }

  private Optional<Escalation.Due> next(
      NoticeRow row, boolean open, Set<EscalationStep> done, Ahead ahead) {
    Set<EscalationStep> possible = EnumSet.of(EscalationStep.MANAGER);
    if (row.state.equals("sent") && ahead.channel().isPresent()) {
      possible.add(EscalationStep.SECOND_CHANNEL);
    }
    if (!ahead.fitters().isEmpty()) {
      possible.add(EscalationStep.FITTERS);
    }
    return Escalation.next(
        WhatHappened.to(row, open, done, possible), policy.of(Urgency.of(row.urgency)));
  }

  private void take(EscalationStep step, NoticeRow row, Ahead ahead) {
    Instant now = clock.instant();
    Optional<String> to =
        step == EscalationStep.SECOND_CHANNEL ? ahead.channel() : Optional.empty();
    EscalationRow taken = new EscalationRow();
    taken.notice = row.notice;
    taken.step = step.code();
    taken.at = now;
    taken.persistAndFlush();
    Decision decision =
        notices.decide(
            row.notice,
            new NoticeCommand.Escalate(step, to, now),
            new Cause(row.raisedEvent, row.correlationId, "escalate-" + step.code()));
    if (decision instanceof Decision.Refused refused) {
      throw new IllegalStateException("A step that is due was refused: " + refused.code());
    }
    switch (step) {
      case SECOND_CHANNEL -> {}
      case FITTERS -> ahead.fitters().forEach(f -> matters.add(f, row.notice, now));
      case MANAGER -> matters.add(Staff.MANAGER, row.notice, now);
    }
  }
}
