package org.tapeline.journal.quarkus.metrics;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** What is left to send and to apply, for every service. */
@ApplicationScoped
class BacklogFigures implements Figures {

  @Override
  public List<Figure> figures() {
    return List.of(
        new Figure(
            "tapeline.journal.unsent.records",
            "Events and changed values that have not reached Kafka",
            """
            select (select count(*) from journal_unsent)
              + (select count(*) from current_state where unsent)
            """),
        new Figure(
            "tapeline.journal.unsent.age.seconds",
            "How long the oldest of them waits; 0 when none does",
            """
            select coalesce(extract(epoch from now() - least(
              (select recorded_at from journal
                where position = (select min(position) from journal_unsent)),
              (select min(changed_at) from current_state where unsent))), 0)
            """),
        new Figure(
            "tapeline.inbox.parked.records",
            "Records of peers that could not be applied, and those that wait behind them",
            "select count(*) from inbox_parked"),
        new Figure(
            "tapeline.inbox.parked.age.seconds",
            "How long the first of them has been parked; 0 when none is",
            "select coalesce(extract(epoch from now() - min(parked_at)), 0) from inbox_parked"));
  }
}
