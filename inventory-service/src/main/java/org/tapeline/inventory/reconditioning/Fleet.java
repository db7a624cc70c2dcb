package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reconditioning.FleetHelmet.Kind;
import org.tapeline.inventory.reconditioning.Needs.At;

/** The helmets that are not retired, and what is known of the need. */
@ApplicationScoped
public class Fleet {
  private static final String HELMETS =
      """
      select h.*, l.back_on
        from helmet h
        left join (select tag, max(back_on) as back_on from reconditioning_line
                    where outcome = 'recertified' group by tag) l on l.tag = h.tag
       where h.state not in ('ordered', 'retired')
       order by h.model, h.size, h.place, h.tag
      """;
  private static final String ADVISED =
      """
      select a.model, a.size, f.field as place, count(*) as n
        from advised_size a join player_field f on f.player = a.player
       where a.choice = 1 group by a.model, a.size, f.field
      """;
  private static final String WAITING =
      """
      select n.model, n.size, c.field as place, count(*) as n
        from case_need n join refit_case c on c.refit_case = n.refit_case
       where c.open and n.status = 'waiting' and n.kind = 'helmet'
       group by n.model, n.size, c.field
      """;

  private final Database database;

  Fleet(Database database) {
    this.database = database;
  }

  public List<FleetHelmet> helmets() {
    return database.list(HELMETS, Fleet::helmet);
  }

  /** In a batch that is being packed: not to be put into another. */
  List<String> inBatches() {
    return database.list(
        "select tag from reconditioning_line where outcome is null", row -> row.getString(1));
  }

  public NeedRules.Known known() {
    Map<Kind, Integer> forecast = new HashMap<>();
    database.list(
        "select model, size, high from size_forecast",
        row -> forecast.put(kind(row), row.getInt("high")));
    return new NeedRules.Known(forecast, atPlaces(ADVISED), atPlaces(WAITING));
  }

  private Map<At, Integer> atPlaces(String sql) {
    Map<At, Integer> counts = new HashMap<>();
    database.list(
        sql, row -> counts.put(new At(kind(row), row.getString("place")), row.getInt("n")));
    return counts;
  }

  private static Kind kind(ResultSet row) throws SQLException {
    return new Kind(row.getString("model"), row.getString("size"));
  }

  private static FleetHelmet helmet(ResultSet row) throws SQLException {
    boolean kept =
        row.getObject("reserved_for", UUID.class) != null
            || row.getObject("planned_for", UUID.class) != null;
    return new FleetHelmet(
        row.getString("tag"),
        row.getString("model"),
        row.getString("size"),
        row.getString("place"),
        kept ? "reserved" : row.getString("state"),
        row.getObject("manufactured_on", LocalDate.class),
        Optional.ofNullable(row.getObject("certified_until", LocalDate.class)),
        Optional.ofNullable(row.getObject("back_on", LocalDate.class)));
  }
}
