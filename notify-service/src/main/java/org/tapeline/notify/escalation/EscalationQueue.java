package org.tapeline.notify.escalation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.NoticeRow;

/** The notices that somebody has to look at, and when. */
@ApplicationScoped
class EscalationQueue {
  private static final int AT_ONCE = 200;

  private final EscalationPolicy policy;

  EscalationQueue(EscalationPolicy policy) {
    this.policy = policy;
  }

  /**
   * What a look at some notices gave.
   *
   * @param due those with a step that may be due, the most urgent first
   * @param more whether there may be others
   */
  record Glance(List<UUID> due, boolean more) {}

  /**
   * Looks at notices whose time has come, some at once: most have just been sent, and all that is
   * to be done is to note when to come again.
   */
  @Transactional
  Glance glance(Instant now) {
    List<UUID> ids = come(now);
    if (ids.isEmpty()) {
      return new Glance(List.of(), false);
    }
    Map<UUID, NoticeRow> rows = NoticeRow.byId(ids);
    Map<UUID, Set<EscalationStep>> done = WhatHappened.stepsOf(ids);
    List<UUID> due = new ArrayList<>();
    for (UUID id : ids) {
      NoticeRow row = rows.get(id);
      Optional<Escalation.Due> soonest =
          WhatHappened.soonest(row, done.getOrDefault(id, Set.of()), policy);
      row.escalateAt = soonest.map(Escalation.Due::at).orElse(null);
      if (row.escalateAt != null && !row.escalateAt.isAfter(now)) {
        due.add(id);
      }
    }
    return new Glance(due, true);
  }

  /** One that cannot be worked on comes again later, so that it holds nobody up. */
  @Transactional
  void putOff(UUID notice, Instant until) {
    NoticeRow row = NoticeRow.locked(notice);
    if (row.escalateAt != null) {
      row.escalateAt = until;
    }
  }

  private static List<UUID> come(Instant now) {
    List<?> ids =
        NoticeRow.getEntityManager()
            .createNativeQuery(
                """
                select notice from notice where escalate_at <= ?1
                order by case urgency when 'do-not-wear' then 0 when 'soon' then 1 else 2 end,
                  escalate_at
                limit ?2 for update skip locked
                """,
                UUID.class)
            .setParameter(1, now)
            .setParameter(2, AT_ONCE)
            .getResultList();
    return ids.stream().map(UUID.class::cast).toList();
  }
}
