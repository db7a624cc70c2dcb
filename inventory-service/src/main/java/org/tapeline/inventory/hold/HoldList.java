package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.DerivedId;

/** The helmets of a hold by field: who had each, and whether it is laid aside. */
@ApplicationScoped
public class HoldList {
  private static final String LINES =
      """
      select d.tag, d.player, d.step, d.put_aside_by is not null as aside, h.model, h.size, h.lot,
             h.state, h.place, coalesce(f.field, h.place) as field
        from hold_helmet d join helmet h on h.tag = d.tag
        left join player_field f on f.player = d.player
       where d.hold = ?
         and (?::text is null or coalesce(f.field, h.place) = any (string_to_array(?, ','))
              or h.place = any (string_to_array(?, ',')))
       order by field, (d.put_aside_at is not null), (d.player is null), d.tag
      """;

  private final Database database;

  HoldList(Database database) {
    this.database = database;
  }

  /**
   * A helmet of the hold.
   *
   * @param player who had it when the hold came on it
   * @param under it is under the hold still
   * @param field where the player is fitted, or where it lies
   */
  public record Line(
      String tag,
      Optional<UUID> player,
      String model,
      String size,
      String lot,
      String state,
      String place,
      String field,
      boolean under,
      boolean aside) {

    /**
     * The id that its button sends: the same whoever looks, so that a second click says nothing.
     */
    public UUID commandId(UUID hold) {
      return DerivedId.from(hold, "put-aside-" + tag);
    }

    /** Nobody has said yet that it lies aside. */
    public boolean out() {
      return under && !aside;
    }
  }

  /** A field with its helmets. */
  public record OfField(String field, List<Line> lines) {
    public long out() {
      return lines.stream().filter(Line::out).count();
    }

    public long secured() {
      return lines.stream().filter(l -> l.under() && l.aside()).count();
    }

    /** The first of them, so that the page of a large hold stays readable. */
    public List<Line> first(int most) {
      return lines.subList(0, Math.min(most, lines.size()));
    }
  }

  /**
   * @param fields only helmets of these; empty for all
   */
  public List<Line> of(UUID hold, Optional<List<String>> fields) {
    String own = fields.map(list -> String.join(",", list)).orElse(null);
    return database.list(LINES, HoldList::read, hold, own, own, own);
  }

  static List<OfField> byField(List<Line> lines) {
    return lines.stream()
        .collect(Collectors.groupingBy(Line::field, TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(e -> new OfField(e.getKey(), e.getValue()))
        .toList();
  }

  private static Line read(ResultSet row) throws SQLException {
    return new Line(
        row.getString("tag"),
        Optional.ofNullable(row.getObject("player", UUID.class)),
        row.getString("model"),
        row.getString("size"),
        row.getString("lot"),
        row.getString("state"),
        row.getString("place"),
        row.getString("field"),
        List.of("due", "held").contains(row.getString("step")),
        row.getBoolean("aside"));
  }
}
