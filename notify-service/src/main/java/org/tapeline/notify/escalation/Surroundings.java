package org.tapeline.notify.escalation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;

/** What else is known of a notice; in the caller's transaction. */
@ApplicationScoped
public class Surroundings {
  /**
   * Something of the notice {@code n} is still to be answered: it did not come to an end, and the
   * person confirmed no newer news of it.
   */
  public static final String IS_OPEN =
      """
       exists (
        select 1 from notice_cover k where k.notice = n.notice and not k.over and not exists (
          select 1 from notice later join notice_cover l on l.notice = later.notice
          where later.recipient = n.recipient and later.raised_at > n.raised_at
            and later.state = 'acknowledged'
            and (l.refit_case = k.refit_case
              or k.refit_case is null and l.refit_case is null and l.player = k.player)))
      """;

  private static final String HAS_NEWER =
      """
      select 1 from notice n
      join notice_cover k on k.notice = n.notice
      join notice later on later.recipient = n.recipient and later.raised_at > n.raised_at
      join notice_cover l on l.notice = later.notice
      where n.notice = ?1 and later.state <> 'cancelled'
        and (l.refit_case = k.refit_case
          or k.refit_case is null and l.refit_case is null and l.player = k.player)
      """;

  private static final String FIELDS =
      """
      select distinct coalesce(c.field, p.field) from notice_cover k
      left join refit_case c on c.refit_case = k.refit_case
      left join player p on p.player = k.player
      where k.notice = ?1 and coalesce(c.field, p.field) is not null order by 1
      """;

  private final EntityManager db;

  Surroundings(EntityManager db) {
    this.db = db;
  }

  /** The fields whose fitters care for it: the cases', else the players'. */
  public List<String> fieldsOf(UUID notice) {
    List<?> fields =
        db.createNativeQuery(FIELDS, String.class).setParameter(1, notice).getResultList();
    return fields.stream().map(String.class::cast).toList();
  }

  /** Whether something of it is still to be answered. */
  boolean isOpen(UUID notice) {
    return any("select 1 from notice n where n.notice = ?1 and" + IS_OPEN, notice);
  }

  /** Whether the person has newer news of the same: the older is not said once more. */
  boolean hasNewer(UUID notice) {
    return any(HAS_NEWER, notice);
  }

  private boolean any(String sql, UUID notice) {
    return !db.createNativeQuery(sql)
        .setParameter(1, notice)
        .setMaxResults(1)
        .getResultList()
        .isEmpty();
  }
}
