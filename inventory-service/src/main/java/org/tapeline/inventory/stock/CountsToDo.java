package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tapeline.inventory.database.Database;

/** What is to be counted: what the books say is less than nothing, then what this season missed. */
@Named("countsToDo")
@ApplicationScoped
public class CountsToDo {
  private static final String TO_DO =
      """
      with there as (
        select substr(e.account, 7) as place, e.item, e.model, sum(e.amount)::int as pieces,
               min(m.at) as first_at
          from ledger_entry e join ledger_move m on m.id = e.move
         where e.account like 'place:%' group by 1, 2, 3)
      select t.place, t.item, t.model, t.pieces, c.counted_at,
             case when t.pieces < 0 then (
               with run as (
                 select m.nr, m.at, sum(e.amount) over (order by m.nr) as after
                   from ledger_entry e join ledger_move m on m.id = e.move
                  where e.account = 'place:' || t.place and e.item = t.item and e.model = t.model)
               select min(at) from run
                where nr > coalesce((select max(nr) from run where after >= 0), 0)) end as below_at,
             t.first_at
        from there t
        left join stock_counted c on c.place = t.place and c.item = t.item and c.model = t.model
       where (? = '' or t.place = ?) and (t.pieces < 0 or c.counted_at is null or c.counted_at < ?)
       order by t.pieces >= 0, below_at, coalesce(c.counted_at, t.first_at), 1, 2, 3
      """;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMM d, uuuu", Locale.US);

  private final Database database;
  private final StockPolicyFile policy;
  private final Clock clock;

  CountsToDo(Database database, StockPolicyFile policy, Clock clock) {
    this.database = database;
    this.policy = policy;
    this.clock = clock;
  }

  /**
   * A part to count.
   *
   * @param pieces what the books say
   * @param belowSince since when they say less than nothing; empty when they do not
   * @param countedAt when it was counted last
   */
  public record ToDo(
      String place,
      String item,
      String model,
      int pieces,
      Optional<Instant> belowSince,
      Optional<Instant> countedAt) {

    /** Why it is to be counted, in words; days by UTC. */
    public String why() {
      if (belowSince.isPresent()) {
        return "More was used than the books had, since " + day(belowSince.get());
      }
      return countedAt
          .map(at -> "Not counted this season, last on " + day(at))
          .orElse("Never counted");
    }

    public boolean below() {
      return belowSince.isPresent();
    }

    private static String day(Instant at) {
      return DAY.format(at.atZone(ZoneOffset.UTC));
    }
  }

  /**
   * The oldest first.
   *
   * @param place empty for all
   */
  public List<ToDo> at(String place) {
    LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    Instant begun = policy.inForce().seasonOf(today).atStartOfDay(ZoneOffset.UTC).toInstant();
    return database.list(TO_DO, CountsToDo::read, place, place, begun);
  }

  private static ToDo read(ResultSet row) throws SQLException {
    return new ToDo(
        row.getString("place"),
        row.getString("item"),
        row.getString("model"),
        row.getInt("pieces"),
        instant(row, "below_at"),
        instant(row, "counted_at"));
  }

  private static Optional<Instant> instant(ResultSet row, String column) throws SQLException {
    return row.getObject(column) == null
        ? Optional.empty()
        : Optional.of(Database.instant(row, column));
  }
}
