package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * Restock requests of which depots are to be told, kept until they are told together: a hold of
 * thousands makes a few mails, not one for each helmet. Always in the caller's transaction.
 */
@ApplicationScoped
class DepotMatters {
  private final EntityManager db;

  DepotMatters(EntityManager db) {
    this.db = db;
  }

  /**
   * @param event what was heard of the request last
   * @param dueAt how long it waits for others
   */
  record Matter(UUID request, String depot, UUID event, UUID correlation, Instant dueAt) {}

  /** What waits already waits no longer for being heard of again. */
  void add(Matter matter) {
    db.createNativeQuery(
            """
            insert into depot_matter as m (request, depot, event, correlation, due_at)
            values (?1, ?2, ?3, ?4, ?5)
            on conflict (request) do update set depot = excluded.depot, event = excluded.event,
              correlation = excluded.correlation, due_at = least(m.due_at, excluded.due_at)
            """)
        .setParameter(1, matter.request())
        .setParameter(2, matter.depot())
        .setParameter(3, matter.event())
        .setParameter(4, matter.correlation())
        .setParameter(5, matter.dueAt())
        .executeUpdate();
  }

  /** Notes the amounts that were told. */
  void told(List<DepotNews> news) {
    db.createNativeQuery(
            """
            insert into restock_told (request, quantity)
            select * from unnest(cast(?1 as uuid[]), cast(?2 as integer[]))
            on conflict (request) do update set quantity = excluded.quantity
            """)
        .setParameter(1, news.stream().map(DepotNews::request).toArray(UUID[]::new))
        .setParameter(2, news.stream().map(n -> n.open().quantity).toArray(Integer[]::new))
        .executeUpdate();
  }

  /** Depots with a request that has waited for others long enough. */
  List<String> due(Instant now) {
    List<?> depots =
        db.createNativeQuery(
                "select distinct depot from depot_matter where due_at <= ?1 order by depot",
                String.class)
            .setParameter(1, now)
            .getResultList();
    return depots.stream().map(String.class::cast).toList();
  }

  /**
   * Takes all that waits for a depot, also what could wait longer. One that another process takes,
   * or hears of, at this moment is left to the next time.
   */
  List<Matter> take(String depot) {
    List<?> rows =
        db.createNativeQuery(
                """
                delete from depot_matter where request in (
                  select request from depot_matter where depot = ?1 for update skip locked)
                returning request, depot, event, correlation, due_at
                """,
                Matter.class)
            .setParameter(1, depot)
            .getResultList();
    return rows.stream().map(Matter.class::cast).toList();
  }
}
