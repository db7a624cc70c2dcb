package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.allocation.PlanEvent.PlanReleased;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reservation.Reservations;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Gives back helmets that a plan kept: to who waits for them, or to the shelf. */
@ApplicationScoped
public class PlanRelease {
  private static final String FREE =
      """
      with over as (delete from planned_helmet where plan = ? returning tag)
      update helmet h set planned_for = null from over where h.tag = over.tag
      returning h.model, h.size
      """;

  private static final String ARRIVED =
      """
      with over as (
        delete from planned_helmet p using plan l
         where l.plan = p.plan and l.wish::json->>'sort' = 'EVEN_OUT'
           and not exists (select 1 from restock r where r.kind = 'transfer' and r.tag = p.tag
                            and r.state in ('requested', 'picked', 'shipped'))
        returning p.tag)
      update helmet h set planned_for = null from over where h.tag = over.tag
      returning h.model, h.size
      """;

  private final Database database;
  private final Reservations reservations;
  private final Journal journal;
  private final Clock clock;

  PlanRelease(Database database, Reservations reservations, Journal journal, Clock clock) {
    this.database = database;
    this.reservations = reservations;
    this.journal = journal;
    this.clock = clock;
  }

  /** All plans whose time is over. */
  void expired(Cause cause) {
    Instant now = clock.instant();
    List<UUID> over =
        database.list(
            "select plan from plan where state = 'committed' and kept_until < ?"
                + " order by plan for update",
            row -> row.getObject(1, UUID.class),
            now);
    over.forEach(plan -> all(plan, "expired", new Cause(plan, cause.correlationId(), "expired")));
  }

  /** A spare is kept while it is on its way; then it is there for whoever needs it. */
  void arrivedSpares(Cause cause) {
    serve(freed(ARRIVED), cause);
  }

  private List<Kind> freed(String sql, Object... values) {
    return database.list(sql, row -> new Kind(row.getString(1), row.getString(2)), values);
  }

  private void serve(List<Kind> freed, Cause cause) {
    SortedSet<Kind> kinds = new TreeSet<>(freed);
    kinds.forEach(kind -> reservations.serve(kind.item(), cause));
  }

  /** How many helmets were kept still. */
  int all(UUID plan, String why, Cause cause) {
    int committed =
        database.change(
            "update plan set state = 'over' where plan = ? and state = 'committed'", plan);
    if (committed == 0) {
      return 0;
    }
    List<Kind> freed = freed(FREE, plan);
    StreamName stream = StreamName.of("plan", plan, plan);
    journal.append(
        stream,
        journal.load(stream).size(),
        List.of(new PlanReleased(plan, why, freed.size(), clock.instant())),
        cause.step("release-plan"));
    serve(freed, cause);
    return freed.size();
  }
}
