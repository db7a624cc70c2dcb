package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.journal.quarkus.metrics.Figure;
import org.tapeline.journal.quarkus.metrics.Figures;

/** Where the helmets stand. */
@ApplicationScoped
class HelmetFigures implements Figures {

  @Override
  public List<Figure> figures() {
    return List.of(
        new Figure(
            "tapeline.helmets",
            "Helmets by state",
            """
            select s.state, coalesce(h.number, 0) from unnest(array['ordered', 'available',
                'issued', 'quarantined', 'held', 'at-reconditioner', 'retired']) s (state)
              left join (select state, count(*) as number from helmet group by state) h
                using (state)
            """));
  }
}
