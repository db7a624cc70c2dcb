package org.tapeline.notify.notice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.journal.quarkus.metrics.Figure;
import org.tapeline.journal.quarkus.metrics.Figures;

/** Who has not been told yet. */
@ApplicationScoped
class NoticeFigures implements Figures {
  private static final String URGENCIES = "unnest(array['do-not-wear', 'soon', 'normal'])";

  @Override
  public List<Figure> figures() {
    return List.of(
        new Figure(
            "tapeline.notices.pending",
            "Notices that no channel has taken yet, those in quiet hours included",
            """
            select u.urgency, count(n.notice) from %s u (urgency)
              left join notice n on n.state = 'raised' and n.urgency = u.urgency
            group by u.urgency
            """
                .formatted(URGENCIES)),
        new Figure(
            "tapeline.notices.pending.age.seconds",
            "How long the oldest of them waits; 0 when none does",
            """
            select u.urgency, coalesce(extract(epoch from now() - min(n.raised_at)), 0)
            from %s u (urgency)
              left join notice n on n.state = 'raised' and n.urgency = u.urgency
            group by u.urgency
            """
                .formatted(URGENCIES)),
        new Figure(
            "tapeline.notices.for.people",
            "People whom no channel reaches, and whom somebody has to call",
            """
            select count(*) from notice
            where people_at is not null and state in ('raised', 'sent', 'undeliverable')
            """));
  }
}
