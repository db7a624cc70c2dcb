package org.tapeline.notify.notice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.tapeline.journal.Cause;

/**
 * What the notices to one person cover, and what of it can still be changed; always in the caller's
 * transaction. Whoever changes what one guardian is told holds the guardian's lock.
 */
@ApplicationScoped
public class NoticeCovers {
  private final Notices notices;
  private final CauseTable table;
  private final TellAgain again;

  NoticeCovers(Notices notices, CauseTable table, TellAgain again) {
    this.notices = notices;
    this.table = table;
    this.again = again;
  }

  /**
   * A notice as seen from one thing that it covers.
   *
   * @param pending whether it can still be taken back: no try ever got as far as to a server
   */
  public record Covered(UUID notice, UUID about, NoticeOfCase told, boolean pending) {}

  /** What one person was told of one case, in the order in which it was raised. */
  public List<Covered> ofCase(UUID refitCase, String recipient) {
    return covered("refitCase", refitCase, recipient);
  }

  /** What one person was told of one player apart from re-fit cases, in order. */
  public List<Covered> ofFit(UUID player, String recipient) {
    return covered("refitCase is null and c.player", player, recipient);
  }

  /**
   * Only one at a time decides what a guardian is told, so that what is ready for several children
   * meets, and nothing is told twice; until the transaction ends.
   */
  public void lock(UUID guardian) {
    NoticeRow.getEntityManager()
        .createNativeQuery("select 1 from pg_advisory_xact_lock(hashtextextended(?1, 17))")
        .setParameter(1, guardian.toString())
        .getResultList();
  }

  /** Takes a pending notice back: what it covered can be told anew. */
  public void takeBack(UUID notice, String why, Instant now, Cause cause) {
    notices.decide(notice, new NoticeCommand.Cancel(why, now), cause);
    NoticeCoverRow.delete("notice", notice);
  }

  /** The case came to an end: what still waits need not say it. */
  public void caseIsOver(UUID refitCase) {
    NoticeCoverRow.update(
        "over = true where refitCase = ?1 and kind <> ?2 and over = false",
        refitCase,
        NoticeKind.FITTED_AGAIN.code());
  }

  /**
   * The player was fitted: what still waits of earlier re-checks and lapses need not say it.
   *
   * @param stillDue re-checks that are due since
   */
  public void fitIsNew(UUID player, Collection<UUID> stillDue) {
    NoticeRow.getEntityManager()
        .createNativeQuery(
            """
            update notice_cover set over = true
            where player = ?1 and refit_case is null and kind in (?2, ?3)
            and not about = any (cast(?4 as uuid[]))
            """)
        .setParameter(1, player)
        .setParameter(2, NoticeKind.RECHECK_DUE.code())
        .setParameter(3, NoticeKind.SIGN_OFF_LAPSED.code())
        .setParameter(4, stillDue.stream().map(UUID::toString).toArray(String[]::new))
        .executeUpdate();
  }

  /** The player was erased: brothers and sisters are told without. */
  public void forget(UUID player) {
    NoticeRow.getEntityManager()
        .createNativeQuery(
            """
            update notice_cover c set over = true where player = ?1 and exists
            (select 1 from notice_cover o where o.notice = c.notice and o.player <> c.player)
            """)
        .setParameter(1, player)
        .executeUpdate();
  }

  /**
   * Whether a notice that waits is not to be sent as it is. Where a part of it still holds, that
   * part is told again in a notice of its own.
   */
  public boolean overtaken(NoticeRow row, Instant now) {
    List<NoticeCoverRow> parts = NoticeCoverRow.list("notice", row.notice);
    List<NoticeCoverRow> left = parts.stream().filter(p -> !overtaken(row, p, now)).toList();
    if (left.size() == parts.size()) {
      return false;
    }
    if (!left.isEmpty()) {
      left.forEach(part -> part.delete());
      again.soon(
          left.stream().map(p -> p.refitCase).filter(Objects::nonNull).toList(),
          left.stream().filter(p -> p.refitCase == null).map(p -> p.player).toList());
    }
    return true;
  }

  private boolean overtaken(NoticeRow row, NoticeCoverRow part, Instant now) {
    return part.over
        || Overtaking.overtaken(part.ofCase(row), row.raisedAt, later(row, part), now, table);
  }

  private static List<NoticeKind> later(NoticeRow row, NoticeCoverRow part) {
    if (part.refitCase == null && part.player == null) {
      return List.of();
    }
    String same = part.refitCase == null ? "c.player" : "c.refitCase";
    return NoticeRow.getEntityManager()
        .createQuery(
            "select n.kind from NoticeRow n join NoticeCoverRow c on c.notice = n.notice where "
                + same
                + " = ?1 and n.recipient = ?2 and n.raisedAt > ?3 and n.state <> 'cancelled'",
            String.class)
        .setParameter(1, part.refitCase == null ? part.player : part.refitCase)
        .setParameter(2, row.recipient)
        .setParameter(3, row.raisedAt)
        .getResultList()
        .stream()
        .map(NoticeKind::of)
        .toList();
  }

  private static List<Covered> covered(String what, UUID id, String recipient) {
    List<Object[]> pairs =
        NoticeRow.getEntityManager()
            .createQuery(
                "select n, c from NoticeRow n join NoticeCoverRow c on c.notice = n.notice where c."
                    + what
                    + " = ?1 and c.recipient = ?2 order by n.raisedAt, n.notice",
                Object[].class)
            .setParameter(1, id)
            .setParameter(2, recipient)
            .getResultList();
    return pairs.stream()
        .map(pair -> covered((NoticeRow) pair[0], (NoticeCoverRow) pair[1]))
        .toList();
  }

  /** Locked while it can still be taken back, so that no try begins meanwhile. */
  private static Covered covered(NoticeRow row, NoticeCoverRow cover) {
    if (row.state.equals("raised")) {
      NoticeRow.getEntityManager().refresh(row, LockModeType.PESSIMISTIC_WRITE);
    }
    return new Covered(row.notice, cover.about, cover.ofCase(row), pending(row));
  }

  private static boolean pending(NoticeRow row) {
    return row.state.equals("raised")
        && (row.attempts == 0 || !NoticeTryRow.mayHaveArrived(row.notice));
  }
}
