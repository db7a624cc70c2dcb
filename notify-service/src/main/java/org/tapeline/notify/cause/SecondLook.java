package org.tapeline.notify.cause;

import io.quarkus.hibernate.orm.panache.Panache;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.Query;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * Looks again at players whose people changed, once everybody who was at work at that moment is
 * done. A case and a guardian of it come on different topics and may be read at the same time:
 * neither sees the other before it is committed, and without a second look nobody would tell that
 * guardian. No lock is taken, so that nobody waits for anybody.
 */
@ApplicationScoped
class SecondLook {
  private final RefitCases cases;
  private final Fits fits;

  SecondLook(RefitCases cases, Fits fits) {
    this.cases = cases;
    this.fits = fits;
  }

  /** In the caller's transaction, which changed the people of these players. */
  void willBeAt(Set<UUID> players) {
    query("insert into people_change (player) select unnest(cast(?1 as uuid[]))")
        .setParameter(1, players.stream().map(UUID::toString).toArray(String[]::new))
        .executeUpdate();
  }

  /**
   * Looks at those whose time has come, some at a time.
   *
   * @return whether there were some
   */
  @Transactional
  boolean look(int limit) {
    Collection<UUID> due = due(limit);
    if (!due.isEmpty()) {
      cases.lookAgain(due);
      fits.lookAgain(due);
    }
    return !due.isEmpty();
  }

  /**
   * Notes at what number the next transaction begins, for changes that are committed by now:
   * everybody who may have missed them has a lower one.
   */
  @Transactional
  void noteWhoIsAtWork() {
    query(
            """
            update people_change set after_xid = pg_snapshot_xmax(pg_current_snapshot())
            where after_xid is null
            """)
        .executeUpdate();
  }

  private static Collection<UUID> due(int limit) {
    List<?> players =
        query(
                """
                delete from people_change where people_change in (
                  select people_change from people_change
                  where after_xid <= pg_snapshot_xmin(pg_current_snapshot())
                  order by people_change limit ?1 for update skip locked)
                returning player
                """)
            .setParameter(1, limit)
            .getResultList();
    return players.stream().map(UUID.class::cast).distinct().toList();
  }

  private static Query query(String sql) {
    return Panache.getEntityManager().createNativeQuery(sql);
  }
}
