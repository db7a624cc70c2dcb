package org.tapeline.notify.digest;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.words.TradeWords;

/**
 * An open re-fit case as staff need it: no more of the child than first name, number and team.
 *
 * @param stop whether the helmet must not be worn
 * @param startsAt of its slot; empty while there is none
 */
record OpenCase(
    UUID player,
    Optional<String> firstName,
    String number,
    String team,
    boolean stop,
    Optional<Instant> startsAt,
    Optional<Instant> openedAt) {

  private static final String SELECT =
      """
      select c.player, p.given_name, p.number, coalesce(p.team, c.team), c.urgency,
        case when c.unbooked_event is null then c.starts_at end, c.opened_at
      from refit_case c left join player p on p.player = c.player
      where c.outcome is null
      """;

  /** Those that are booked at a field from a time on and before another. */
  static List<OpenCase> booked(EntityManager db, String field, Instant from, Instant until) {
    return read(
        db.createNativeQuery(
                SELECT
                    + """
                    and c.booking_field = ?1 and c.unbooked_event is null
                    and c.starts_at >= ?2 and c.starts_at < ?3 order by c.starts_at, c.player
                    """,
                Object[].class)
            .setParameter(1, field)
            .setParameter(2, from)
            .setParameter(3, until));
  }

  /** All of a field, "do not wear" first, then by their slot. */
  static List<OpenCase> of(EntityManager db, String field) {
    return read(
        db.createNativeQuery(
                SELECT
                    + """
                    and c.opened_event is not null and c.field = ?1
                    order by c.urgency, c.starts_at nulls first, c.player
                    """,
                Object[].class)
            .setParameter(1, field));
  }

  /** All that were opened before a time, the oldest first. */
  static List<OpenCase> openedBefore(EntityManager db, Instant before) {
    return read(
        db.createNativeQuery(
                SELECT
                    + """
                    and c.opened_event is not null and c.opened_at < ?1
                    order by c.opened_at, c.player
                    """,
                Object[].class)
            .setParameter(1, before));
  }

  /** Such as {@code Mia, LV-0001, U10 Hawks}. */
  String child(String unknown) {
    StringBuilder words = new StringBuilder(firstName.orElse(unknown));
    for (String more : List.of(number, team)) {
      words.append(more.isEmpty() ? "" : ", " + more);
    }
    return words.toString();
  }

  private static List<OpenCase> read(Query query) {
    List<OpenCase> cases = new ArrayList<>();
    for (Object row : query.getResultList()) {
      Object[] c = (Object[]) row;
      cases.add(
          new OpenCase(
              (UUID) c[0],
              Optional.ofNullable((String) c[1]),
              c[2] == null ? "" : (String) c[2],
              c[3] == null ? "" : TradeWords.team((String) c[3]),
              "do-not-wear".equals(c[4]),
              Optional.ofNullable((Instant) c[5]),
              Optional.ofNullable((Instant) c[6])));
    }
    return cases;
  }
}
