package org.tapeline.notify.notice;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import org.tapeline.journal.Cause;

/** Inserts a notice's row first and asks afterwards, which is what makes a repeat harmless. */
final class NoticeInsert {
  private NoticeInsert() {}

  /** False when the same notice, or the same key under another id, is there already. */
  static boolean insert(NewNotice n, Cause cause, Instant now) {
    EntityManager db = NoticeRow.getEntityManager();
    int rows =
        db.createNativeQuery(
                """
                insert into notice (notice, about, kind, recipient, version, state, urgency,
                  template, template_version, language, refit_case, slot_starts_at, slot_field,
                  correlation_id, raised_event, raised_at, changed_at, next_try_at)
                values (:notice, :about, :kind, :recipient, 1, 'raised', :urgency,
                  :template, :templateVersion, :language, cast(:refitCase as uuid),
                  cast(:slotStartsAt as timestamptz), :slotField,
                  :correlation, :cause, :now, :now, :now)
                on conflict do nothing
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
            .executeUpdate();
    if (rows == 1) {
      n.causes().forEach(event -> add(db, "notice_cause", "event", n.id(), event));
      n.covers().forEach(cover -> NoticeCoverRow.of(n, cover).persist());
      n.players().forEach(player -> add(db, "notice_player", "player", n.id(), player));
    }
    return rows == 1;
  }

  private static void add(EntityManager db, String table, String column, UUID notice, UUID value) {
    db.createNativeQuery("insert into " + table + " (notice, " + column + ") values (?1, ?2)")
        .setParameter(1, notice)
        .setParameter(2, value)
        .executeUpdate();
  }
}
