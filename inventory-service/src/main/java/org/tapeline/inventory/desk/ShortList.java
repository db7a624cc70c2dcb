package org.tapeline.inventory.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.desk.ShortLine.Arrival;
import org.tapeline.inventory.desk.ShortLine.Counts;
import org.tapeline.inventory.desk.ShortLine.Forecast;

/** What is short and by when: the season's forecast and the waiting re-fits, against stock. */
@ApplicationScoped
public class ShortList {
  private static final String LINES =
      """
      with waiting as (
        select n.need_key, count(*)::int as cases,
               (count(*) filter (where c.urgency = 'do-not-wear'))::int as urgent,
               min(n.waiting_since)::date as since
          from refit_case c join case_need n on n.refit_case = c.refit_case
         where c.open and n.status = 'waiting' group by 1),
      forecast as (select 'helmet:' || model || ':' || size as need_key, * from size_forecast),
      there as (
        select 'helmet:' || model || ':' || size as need_key, count(*)::int as usable,
               (count(*) filter (where state = 'available' and reserved_for is null
                 and planned_for is null))::int as free
          from helmet where state in ('available', 'issued')
           and (certified_until is null or certified_until >= ?) group by 1
        union all
        select t.item, t.pieces::int, (t.pieces - coalesce(k.kept, 0))::int
          from (select item, sum(amount) as pieces from ledger_entry
                 where account like 'place:%' group by 1) t
          left join (select item, count(*) as kept from reservation
                      where status = 'live' and item is not null group by 1) k on k.item = t.item),
      keys as (select need_key from waiting union select need_key from forecast
               union select item from restock
                where kind = 'restock' and state not in ('received', 'cancelled')
               union select need_key from there where free < 0)
      select k.need_key, f.needed_on, f.expected, f.low, f.high, coalesce(t.usable, 0) as usable,
             coalesce(t.free, 0) as free, coalesce(w.cases, 0) as cases,
             coalesce(w.urgent, 0) as urgent, w.since
        from keys k left join forecast f on f.need_key = k.need_key
        left join there t on t.need_key = k.need_key
        left join waiting w on w.need_key = k.need_key
       order by f.model nulls last, f.place_in_chart, k.need_key
      """;
  private static final String ARRIVALS =
      """
      select item, expected_at::date as day, sum(quantity)::int as pieces from restock
       where kind = 'restock' and state not in ('received', 'cancelled') group by 1, 2
      union all
      select 'helmet:' || model || ':' || size, expected_on, count(*)::int from helmet
       where state = 'ordered' group by 1, 2
      """;

  private final Database database;

  ShortList(Database database) {
    this.database = database;
  }

  public List<ShortLine> lines(LocalDate today) {
    Map<String, List<Arrival>> arrivals =
        database.list(ARRIVALS, ShortList::arrival).stream()
            .collect(Collectors.groupingBy(Arrival::needKey));
    return database.list(
        LINES,
        row -> {
          String key = row.getString("need_key");
          List<Arrival> coming = arrivals.getOrDefault(key, List.of());
          return ShortLine.of(key, forecast(row), counts(row, today), coming, today);
        },
        today);
  }

  private static Arrival arrival(ResultSet row) throws SQLException {
    return new Arrival(
        row.getString(1), Optional.ofNullable(row.getObject(2, LocalDate.class)), row.getInt(3));
  }

  private static Optional<Forecast> forecast(ResultSet row) throws SQLException {
    LocalDate neededOn = row.getObject("needed_on", LocalDate.class);
    return neededOn == null
        ? Optional.empty()
        : Optional.of(
            new Forecast(
                neededOn, row.getDouble("expected"), row.getInt("low"), row.getInt("high")));
  }

  private static Counts counts(ResultSet row, LocalDate today) throws SQLException {
    LocalDate since = row.getObject("since", LocalDate.class);
    return new Counts(
        row.getInt("usable"),
        row.getInt("free"),
        row.getInt("cases"),
        row.getInt("urgent"),
        since == null ? today : since);
  }
}
