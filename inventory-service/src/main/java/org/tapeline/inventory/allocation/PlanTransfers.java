package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.RestockDesk;
import org.tapeline.inventory.restock.RestockDesk.Bring;
import org.tapeline.inventory.restock.RestockPolicy;
import org.tapeline.journal.Cause;

/** Has the helmets of a plan brought to the fields of their players. */
@ApplicationScoped
public class PlanTransfers {
  private final Database database;
  private final RestockDesk restock;
  private final RestockPolicy policy;
  private final Places places;
  private final Clock clock;

  PlanTransfers(
      Database database, RestockDesk restock, RestockPolicy policy, Places places, Clock clock) {
    this.database = database;
    this.restock = restock;
    this.policy = policy;
    this.places = places;
    this.clock = clock;
  }

  private record Journey(String tag, Kind kind, String from, String to) {}

  /**
   * Before a season and between fields: else the case that opens for each player asks for its
   * helmet itself. In the order of the ways, so that what goes the same way stands together on the
   * list.
   */
  void ask(Plan plan, Cause cause) {
    boolean cases =
        switch (plan.wish().sort()) {
          case HOLD, CASES -> true;
          case SEASON, EVEN_OUT -> false;
        };
    if (cases) {
      return;
    }
    Instant now = clock.instant();
    for (Journey j : journeys(plan.plan())) {
      Instant there = policy.travelled(now, places.zone(j.to()));
      Bring bring =
          new Bring(
              j.kind().item(), j.kind().model(), j.kind().size(), j.tag(), j.from(), j.to(), there);
      restock.bring(bring, cause);
    }
  }

  private List<Journey> journeys(UUID plan) {
    return database.list(
        "select h.tag, h.model, h.size, h.place, p.field from planned_helmet p"
            + " join helmet h on h.tag = p.tag where p.plan = ? and h.place <> p.field"
            + " order by h.place, p.field, h.model, h.size, h.tag",
        row ->
            new Journey(
                row.getString(1),
                new Kind(row.getString(2), row.getString(3)),
                row.getString(4),
                row.getString(5)),
        plan);
  }
}
