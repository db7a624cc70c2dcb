package org.tapeline.notify.unreached;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.notify.escalation.Surroundings;
import org.tapeline.notify.notice.NoticeKind;

/** Finds the notices that are people's business; in the caller's transaction. */
@ApplicationScoped
class OpenNotices {
  /** Nobody is called for good news, nor for a child who was erased with all words about it. */
  private static final String OPEN =
      """
       from notice n
      join guardian g on g.guardian = cast(n.recipient as uuid)
      where n.people_at is not null and n.state in ('raised', 'sent', 'undeliverable')
        and n.kind <> :goodNews
        and (exists (select 1 from notice_text t where t.notice = n.notice)
          or exists (select 1 from notice_player np join player p on p.player = np.player
            where np.notice = n.notice))
        and
      """
          + Surroundings.IS_OPEN;

  private static final String FIELDS =
      """
      (select string_agg(distinct coalesce(c.field, p.field), ' ') from notice_cover k
        left join refit_case c on c.refit_case = k.refit_case
        left join player p on p.player = k.player where k.notice = n.notice)
      """;

  private static final String OF_FIELDS =
      """
       and exists (select 1 from notice_cover k
        left join refit_case c on c.refit_case = k.refit_case
        left join player p on p.player = k.player
        where k.notice = n.notice and coalesce(c.field, p.field) in (:fields))
      """;

  private static final String OF_TEAM =
      """
       and exists (select 1 from notice_player np join player p on p.player = np.player
        where np.notice = n.notice and p.team = :team)
      """;

  private static final String ORDER =
      """
       order by case n.urgency when 'do-not-wear' then 0 when 'soon' then 1 else 2 end,
        n.people_at, n.notice
      """;

  private final EntityManager db;

  OpenNotices(EntityManager db) {
    this.db = db;
  }

  /** A notice and the fields whose fitters care for it; none while that is not known. */
  record Open(UUID notice, UUID guardian, Set<String> fields) {}

  /**
   * The most urgent first, then the oldest.
   *
   * @param fields only of these; empty for all
   */
  List<Open> list(Optional<? extends Collection<String>> fields) {
    Query query = query(fields.isPresent() ? OF_FIELDS : "");
    fields.ifPresent(codes -> query.setParameter("fields", orNone(codes)));
    return read(query);
  }

  /** Those of these notices that are still open. */
  List<Open> of(Collection<UUID> notices) {
    return notices.isEmpty()
        ? List.of()
        : read(
            query(" and n.notice = any (cast(:notices as uuid[]))")
                .setParameter(
                    "notices", notices.stream().map(UUID::toString).toArray(String[]::new)));
  }

  /** Those about players of a team. */
  List<Open> ofTeam(String team) {
    return read(query(OF_TEAM).setParameter("team", team));
  }

  private Query query(String only) {
    return db.createNativeQuery(
            "select n.notice, g.guardian, " + FIELDS + OPEN + only + ORDER, Object[].class)
        .setParameter("goodNews", NoticeKind.FITTED_AGAIN.code());
  }

  private static Collection<String> orNone(Collection<String> fields) {
    return fields.isEmpty() ? List.of("") : fields;
  }

  private static List<Open> read(Query query) {
    List<Open> open = new ArrayList<>();
    for (Object row : query.getResultList()) {
      Object[] cells = (Object[]) row;
      String fields = cells[2] == null ? "" : (String) cells[2];
      open.add(
          new Open(
              (UUID) cells[0],
              (UUID) cells[1],
              fields.isEmpty() ? Set.of() : Set.of(fields.split(" "))));
    }
    return open;
  }
}
