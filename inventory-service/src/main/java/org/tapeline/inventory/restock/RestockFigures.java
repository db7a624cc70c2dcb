package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.journal.quarkus.metrics.Figure;
import org.tapeline.journal.quarkus.metrics.Figures;

/** What the warehouse has to do. */
@ApplicationScoped
class RestockFigures implements Figures {

  @Override
  public List<Figure> figures() {
    return List.of(
        new Figure(
            "tapeline.restock.requests.open",
            "Open restock requests and transfers by how far they are",
            """
            select s.state, count(r.request)
            from unnest(array['requested', 'picked', 'shipped']) s (state)
              left join restock r on r.state = s.state
                and r.state in ('requested', 'picked', 'shipped')
            group by s.state
            """),
        new Figure(
            "tapeline.restock.requests.overdue",
            "Open restock requests and transfers that were expected earlier",
            """
            select count(*) from restock
            where state in ('requested', 'picked', 'shipped') and expected_at < now()
            """));
  }
}
