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
import java.util.stream.Collectors;
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
  private static final int AT_ONCE = 50;

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

  /** Notices whose time has come, the most urgent first, some at a time. */
  @Transactional
  List<UUID> due(Instant now) {
    List<?> due =
        NoticeRow.getEntityManager()
            .createNativeQuery(
                """
                select notice from notice where escalate_at <= ?1
                order by case urgency when 'do-not-wear' then 0 when 'soon' then 1 else 2 end,
                  escalate_at
                limit ?2
                """,
                UUID.class)
            .setParameter(1, now)
            .setParameter(2, AT_ONCE)
            .getResultList();
    return due.stream().map(UUID.class::cast).toList();
  }

  /** Does what is due with a notice; nothing when another process did it meanwhile. */
  @Transactional
  void look(UUID notice, Instant now) {
    NoticeRow row = NoticeRow.locked(notice);
    if (row.escalateAt != null && !row.escalateAt.isAfter(now)) {
      look(row, now);
    }
  }

  /** One that cannot be worked on comes again later, so that it holds nobody up. */
  @Transactional
  void putOff(UUID notice, Instant until) {
    NoticeRow row = NoticeRow.locked(notice);
    if (row.escalateAt != null) {
      row.escalateAt = until;
    }
  }

  /** A step that was due long ago is taken now, and the ones after it that are due as well. */
  private void look(NoticeRow row, Instant now) {
    Optional<Escalation.Due> next = next(row, now);
    while (next.isPresent() && !next.get().at().isAfter(now)) {
      take(next.get().step(), row);
      next = next(row, now);
    }
    row.escalateAt = next.map(Escalation.Due::at).orElse(null);
  }

  private Optional<Escalation.Due> next(NoticeRow row, Instant now) {
    EscalationPolicy.Rule rule = policy.of(Urgency.of(row.urgency));
    // What is around a notice is asked for only when a step could be due at all.
    Optional<Escalation.Due> soonest =
        Escalation.next(happened(row, false, EnumSet.allOf(EscalationStep.class)), rule);
    if (soonest.isEmpty() || soonest.get().at().isAfter(now)) {
      return soonest;
    }
    boolean over = !surroundings.isOpen(row.notice);
    return Escalation.next(happened(row, over, possible(row)), rule);
  }

  private static Happened happened(NoticeRow row, boolean over, Set<EscalationStep> possible) {
    Set<EscalationStep> done =
        EscalationRow.of(List.of(row.notice)).stream()
            .map(taken -> EscalationStep.of(taken.step))
            .collect(Collectors.toUnmodifiableSet());
    return new Happened(
        Urgency.of(row.urgency),
        row.raisedAt,
        Optional.ofNullable(row.sentAt),
        row.state.equals("undeliverable") ? Optional.of(row.peopleAt) : Optional.empty(),
        over || row.state.equals("acknowledged") || row.state.equals("cancelled"),
        done,
        possible);
  }

  private Set<EscalationStep> possible(NoticeRow row) {
    Set<EscalationStep> possible = EnumSet.of(EscalationStep.MANAGER);
    if (row.state.equals("sent")
        && !surroundings.hasNewer(row.notice)
        && secondChannel(row).isPresent()) {
      possible.add(EscalationStep.SECOND_CHANNEL);
    }
    if (!fitters(row).isEmpty()) {
      possible.add(EscalationStep.FITTERS);
    }
    return possible;
  }

  private void take(EscalationStep step, NoticeRow row) {
    Instant now = clock.instant();
    Optional<String> to =
        step == EscalationStep.SECOND_CHANNEL ? secondChannel(row) : Optional.empty();
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
      case FITTERS -> fitters(row).forEach(f -> matters.add(f, row.notice, now));
      case MANAGER -> matters.add(Staff.MANAGER, row.notice, now);
    }
  }

  private Optional<String> secondChannel(NoticeRow row) {
    return reach.next(row.recipient, Urgency.of(row.urgency), NoticeTryRow.channelsOf(row.notice));
  }

  private List<String> fitters(NoticeRow row) {
    return surroundings.fieldsOf(row.notice).stream()
        .flatMap(field -> staff.fitters(field).stream())
        .toList();
  }
}
