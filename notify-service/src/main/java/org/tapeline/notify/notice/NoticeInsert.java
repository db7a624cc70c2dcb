package org.tapeline.notify.notice;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.Collection;
import java.util.UUID;
import org.tapeline.journal.Cause;

/** Inserts a notice's row first and asks afterwards, which is what makes a repeat harmless. */
final class NoticeInsert {
  private NoticeInsert() {}

  /** False when the same notice, or the same key under another id, is there already. */
  static boolean insert(NewNotice n, Cause cause, Instant now) {
    EntityManager db = NoticeRow.getEntityManager();
    Number rows =
        (Number)
            db.createNativeQuery(
                    """
                    with new as (
                      insert into notice (notice, about, kind, recipient, version, state, urgency,
                        template, template_version, language, refit_case, slot_starts_at, slot_field,
                        correlation_id, raised_event, raised_at, changed_at, next_try_at)
                      values (:notice, :about, :kind, :recipient, 1, 'raised', :urgency,
                        :template, :templateVersion, :language, cast(:refitCase as uuid),
                        cast(:slotStartsAt as timestamptz), :slotField,
                        :correlation, :cause, :now, :now, :now)
                      on conflict do nothing returning notice),
                    causes as (
                      insert into notice_cause (notice, event)
                      select notice, unnest(cast(:causes as uuid[])) from new),
                    players as (
                      insert into notice_player (notice, player)
                      select notice, unnest(cast(:players as uuid[])) from new)
                    select count(*) from new
                    """)
                .setParameter("notice", n.id())
                .setParameter("about", n.about())
                .setParameter("kind", n.kind().code())
                .setParameter("recipient", n.recipient())
                .setParameter("urgency", n.urgency().code())
                .setParameter("template", n.template())
                .setParameter("templateVersion", n.templateVersion())
                .setParameter("language", n.letter().language())
                .setParameter("refitCase", n.refitCase().map(UUID::toString).orElse(null))
                .setParameter("slotStartsAt", n.slotStartsAt().map(Instant::toString).orElse(null))
                .setParameter("slotField", n.slotField().orElse(null))
                .setParameter("correlation", cause.correlationId())
                .setParameter("cause", cause.id())
                .setParameter("now", now)
                .setParameter("causes", texts(n.causes()))
                .setParameter("players", texts(n.players()))
                .getSingleResult();
    if (rows.intValue() == 0) {
      return false;
    }
    n.covers().forEach(cover -> NoticeCoverRow.of(n, cover).persist());
    return true;
  }

  private static String[] texts(Collection<UUID> ids) {
    return ids.stream().map(UUID::toString).toArray(String[]::new);
  }
}
