package org.tapeline.notify.cause;

import io.quarkus.hibernate.orm.panache.Panache;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.Query;
import jakarta.transaction.Transactional;
import java.util.HashSet;
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
  private static final int AT_ONCE = 50;

  /**
   * Takes changes whose time has come off the list, and says of each whether its player's case or
   * fit was last written by somebody at work at that moment. Numbers of transactions in a row's
   * {@code xmin} have 32 bits; one that comes out as near by mistake costs a look for nothing.
   */
  private static final String DUE =
      """
      with due as (
        delete from people_change where people_change in (
          select people_change from people_change
          where after_xid <= pg_snapshot_xmin(pg_current_snapshot())
          order by people_change limit ?1 for update skip locked)
        returning player, from_xid::text::bigint as first, after_xid::text::bigint as after)
      select player,
        exists (select 1 from refit_case c where c.player = due.player and c.outcome is null
                and ((c.xmin::text::bigint - first) & 4294967295) < after - first)
        or exists (select 1 from fit f where f.player = due.player
                and ((f.xmin::text::bigint - first) & 4294967295) < after - first)
      from due
      """;

  private final RefitCases cases;
  private final Fits fits;

  SecondLook(RefitCases cases, Fits fits) {
    this.cases = cases;
    this.fits = fits;
  }

  /**
   * In the caller's transaction, which changed the people of these players and has not looked yet
   * at what there is to tell.
   */
  void willBeAt(Set<UUID> players) {
    query("insert into people_change (player) select unnest(cast(?1 as uuid[]))")
        .setParameter(1, players.stream().map(UUID::toString).toArray(String[]::new))
        .executeUpdate();
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

  /**
   * Looks at players whose time has come, some at a time.
   *
   * @return whether there may be more
   */
  @Transactional
  boolean look() {
    List<?> due = query(DUE).setParameter(1, AT_ONCE).getResultList();
    Set<UUID> missed = new HashSet<>();
    for (Object row : due) {
      Object[] change = (Object[]) row;
      if ((Boolean) change[1]) {
        missed.add((UUID) change[0]);
      }
    }
    if (!missed.isEmpty()) {
      cases.lookAgain(missed);
      fits.lookAgain(missed);
    }
    return due.size() == AT_ONCE;
  }

  private static Query query(String sql) {
    return Panache.getEntityManager().createNativeQuery(sql);
  }
}
