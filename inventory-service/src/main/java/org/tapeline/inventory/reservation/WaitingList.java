package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;

/** Who waits for what, in the order in which they are served. */
@ApplicationScoped
public class WaitingList {
  private static final int MOST = 1000;
  // The place in line counts all who wait; only then are the lines left out that are not to be
  // seen.
  private static final String LINES =
      """
      with line as (
        select c.refit_case, c.player, c.field, c.urgency, n.need_key, n.waiting_since,
               row_number() over w as nth, count(*) over (partition by n.need_key) as all_who_wait,
               (select min(r.expected_at) from restock r
                  join restock_cause rc on rc.request = r.request
                 where rc.refit_case = c.refit_case and rc.need_key = n.need_key
                   and r.state not in ('received', 'cancelled')) as expected_at
          from refit_case c join case_need n on n.refit_case = c.refit_case
         where c.open and n.status = 'waiting'
        window w as (partition by n.need_key
                     order by c.urgency = 'do-not-wear' desc, n.waiting_since, c.refit_case))
      select * from line
       where (?::text is null or field = any (string_to_array(?, ',')))
         and (? = '' or field = ?) and (? = '' or need_key = ?)
       order by urgency = 'do-not-wear' desc, waiting_since, refit_case, need_key
       limit\s\
      """;

  private final Database database;

  WaitingList(Database database) {
    this.database = database;
  }

  /**
   * Somebody who waits for something.
   *
   * @param urgency {@code do-not-wear} or {@code soon}
   * @param nth place in the line for that thing, at all fields; 1 is next
   * @param expectedAt when it should come, if it was asked for
   */
  public record Line(
      UUID refitCase,
      UUID player,
      String field,
      String urgency,
      String needKey,
      Instant since,
      int nth,
      int allWhoWait,
      Optional<Instant> expectedAt) {
    public boolean urgent() {
      return urgency.equals("do-not-wear");
    }
  }

  /**
   * @param bounds only cases at these fields; empty for all
   * @param field only those of one field, or empty
   * @param needKey only those who wait for this, or empty
   */
  public List<Line> list(Optional<List<String>> bounds, String field, String needKey) {
    String own = bounds.map(fields -> String.join(",", fields)).orElse(null);
    return database.list(LINES + MOST, WaitingList::read, own, own, field, field, needKey, needKey);
  }

  private static Line read(ResultSet row) throws SQLException {
    return new Line(
        row.getObject("refit_case", UUID.class),
        row.getObject("player", UUID.class),
        row.getString("field"),
        row.getString("urgency"),
        row.getString("need_key"),
        Database.instant(row, "waiting_since"),
        row.getInt("nth"),
        row.getInt("all_who_wait"),
        Optional.ofNullable(row.getObject("expected_at", OffsetDateTime.class))
            .map(OffsetDateTime::toInstant));
  }
}
