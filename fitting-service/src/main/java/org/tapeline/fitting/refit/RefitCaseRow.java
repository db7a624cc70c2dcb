package org.tapeline.fitting.refit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.refit.RefitEvent.RefitBooked;
import org.tapeline.fitting.refit.RefitEvent.RefitClosed;
import org.tapeline.fitting.refit.RefitEvent.RefitOpened;
import org.tapeline.fitting.refit.RefitEvent.RefitUnbooked;

/** A re-fit case as it stands. */
@Entity
@Table(name = "refit_case")
public class RefitCaseRow extends PanacheEntityBase {
  static final String OPEN = "open";
  static final String CLOSED = "closed";

  @Id
  @Column(name = "refit_case")
  public UUID refitCase;

  public UUID player;
  public String field;
  public String team;
  public String urgency;
  public String why;
  public String tag;
  public String status;

  @Column(name = "opened_at")
  public Instant openedAt;

  /** A booking stands in the slots. */
  static void show(RefitEvent event) {
    switch (event) {
      case RefitOpened e -> opened(e);
      case RefitBooked e -> {}
      case RefitUnbooked e -> {}
      case RefitClosed e -> {
        RefitCaseRow row = findById(e.refitCase());
        row.status = CLOSED;
        row.persistAndFlush();
      }
    }
  }

  private static void opened(RefitOpened open) {
    RefitCaseRow row = new RefitCaseRow();
    row.refitCase = open.refitCase();
    row.player = open.player();
    row.field = open.field();
    row.team = open.team();
    row.urgency = open.urgency();
    row.why = open.why();
    row.tag = open.tag().orElse(null);
    row.status = OPEN;
    row.openedAt = open.at();
    row.persistAndFlush();
    open.needs().forEach(need -> RefitNeedRow.keep(open.refitCase(), need));
  }

  boolean open() {
    return status.equals(OPEN);
  }

  RefitRules.Ask ask() {
    return new RefitRules.Ask(why, Optional.ofNullable(tag), RefitNeedRow.needs(refitCase));
  }

  static Optional<RefitCaseRow> openOf(UUID player) {
    return find("player = ?1 and status = 'open'", player).firstResultOptional();
  }

  /** Oldest first. */
  static List<RefitCaseRow> allOpen() {
    return list("status = 'open' order by openedAt, refitCase");
  }

  /** Held until the transaction ends, so that nothing else happens to the case meanwhile. */
  static Optional<RefitCaseRow> lockedOpenOf(UUID player) {
    return RefitCaseRow.<RefitCaseRow>find("player = ?1 and status = 'open'", player)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional();
  }

  /** Those of these that are open; held. */
  static List<RefitCaseRow> lockedOpen(Collection<UUID> refitCases) {
    return refitCases.isEmpty()
        ? List.of()
        : RefitCaseRow.<RefitCaseRow>find(
                "refitCase in ?1 and status = 'open' order by refitCase", refitCases)
            .withLock(LockModeType.PESSIMISTIC_WRITE)
            .list();
  }

  /**
   * The open cases without a slot that suits, though it is known when everything is there; held.
   * One to which something is happening at this moment is passed over.
   */
  static List<RefitCaseRow> waiting(Instant now) {
    @SuppressWarnings("unchecked")
    List<RefitCaseRow> rows =
        getEntityManager()
            .createNativeQuery(
                """
                select c.* from refit_case c
                where c.status = 'open'
                  and not exists (select 1 from refit_need n
                    where n.refit_case = c.refit_case and n.arrives_at is null)
                  and not exists (select 1 from fit_slot s
                    where s.refit_case = c.refit_case and s.ends_at > :now
                      and s.starts_at >= all (select n.arrives_at from refit_need n
                        where n.refit_case = c.refit_case))
                order by c.opened_at, c.refit_case
                for no key update of c skip locked
                """,
                RefitCaseRow.class)
            .setParameter("now", now)
            .getResultList();
    return rows;
  }

  /** Open cases of these players. */
  static List<RefitCaseRow> openOfAll(Collection<UUID> players) {
    return players.isEmpty() ? List.of() : list("player in ?1 and status = 'open'", players);
  }
}
