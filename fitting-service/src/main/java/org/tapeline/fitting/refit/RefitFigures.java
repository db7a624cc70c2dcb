package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.journal.quarkus.metrics.Figure;
import org.tapeline.journal.quarkus.metrics.Figures;

/** How many players wait for a helmet that fits, and for how long. */
@ApplicationScoped
class RefitFigures implements Figures {

  @Override
  public List<Figure> figures() {
    return List.of(
        new Figure(
            "tapeline.refit.cases.open",
            "Open re-fit cases by age",
            """
            select a.age, count(c.refit_case) from (values
                ('under 1 day', interval '0', interval '1 day'),
                ('1 to 3 days', interval '1 day', interval '3 days'),
                ('3 to 7 days', interval '3 days', interval '7 days'),
                ('over 7 days', interval '7 days', interval '100 years')) a (age, least, below)
              left join refit_case c on c.status = 'open'
                and now() - c.opened_at >= a.least and now() - c.opened_at < a.below
            group by a.age
            """),
        new Figure(
            "tapeline.refit.cases.unbooked",
            "Open re-fit cases without a slot ahead",
            """
            select count(*) from refit_case c where c.status = 'open' and not exists
              (select 1 from fit_slot s where s.refit_case = c.refit_case and s.ends_at > now())
            """));
  }
}
