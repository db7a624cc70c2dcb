package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetViews.View;

/** All helmets, filtered, sorted and page by page: the database does it, however many there are. */
@ApplicationScoped
public class HelmetList {
  private static final int SOON_DAYS = 30;

  private final Database database;

  HelmetList(Database database) {
    this.database = database;
  }

  /**
   * What is looked for; what is empty does not matter.
   *
   * @param certified {@code ended}, {@code soon} (within 30 days) or {@code unknown}
   */
  public record Filter(String place, String model, String size, String state, String certified) {
    public Filter {
      place = place == null ? "" : place.strip();
      model = model == null ? "" : model.strip();
      size = size == null ? "" : size.strip();
      state = state == null ? "" : state.strip();
      certified = certified == null ? "" : certified.strip();
    }
  }

  /** By which column, named as in the address of the page; rising, or falling. */
  public enum Column {
    PLACE("place", "model, size, tag"),
    TAG("tag", "tag"),
    MODEL("model", "size, tag"),
    SIZE("size", "model, tag"),
    STATE("case when reserved_for is null then state else 'reserved' end", "tag"),
    CERTIFIED("certified_until", "tag");

    private final String first;
    private final String then;

    Column(String first, String then) {
      this.first = first;
      this.then = then;
    }

    String order(boolean falling) {
      return first + (falling ? " desc" : "") + " nulls last, " + then;
    }
  }

  private record Where(String sql, List<Object> values) {}

  /**
   * @param bounds only helmets at these places, or of players who are fitted there; empty for all
   */
  public long count(Filter filter, Optional<List<String>> bounds, LocalDate today) {
    Where where = where(filter, bounds, today);
    return database
        .first(
            "select count(*) from helmet h" + where.sql(),
            row -> row.getLong(1),
            where.values().toArray())
        .orElse(0L);
  }

  /**
   * @param from how many are passed over
   */
  public List<View> list(
      Filter filter,
      Optional<List<String>> bounds,
      LocalDate today,
      Column by,
      boolean falling,
      long from,
      int most) {
    Where where = where(filter, bounds, today);
    String sql = "select h.* from helmet h" + where.sql() + " order by " + by.order(falling);
    return database.list(
        sql + " offset " + from + " limit " + most, HelmetViews::read, where.values().toArray());
  }

  private static Where where(Filter filter, Optional<List<String>> bounds, LocalDate today) {
    StringBuilder sql = new StringBuilder(" where true");
    List<Object> values = new ArrayList<>();
    equal(sql, values, "place", filter.place());
    equal(sql, values, "model", filter.model());
    equal(sql, values, "size", filter.size());
    if (filter.state().equals("reserved")) {
      sql.append(" and h.reserved_for is not null");
    } else {
      equal(sql, values, "state", filter.state());
      sql.append(filter.state().equals("available") ? " and h.reserved_for is null" : "");
    }
    certified(sql, values, filter.certified(), today);
    bounds.ifPresent(
        own -> {
          sql.append(" and (h.place = any (string_to_array(?, ',')) or h.holder in (select player");
          sql.append(" from player_field where field = any (string_to_array(?, ','))))");
          values.add(String.join(",", own));
          values.add(String.join(",", own));
        });
    return new Where(sql.toString(), values);
  }

  private static void certified(
      StringBuilder sql, List<Object> values, String certified, LocalDate today) {
    switch (certified) {
      case "ended" -> {
        sql.append(" and h.state in ('available', 'issued') and h.certified_until < ?");
        values.add(today);
      }
      case "soon" -> {
        sql.append(" and h.state in ('available', 'issued') and h.certified_until between ? and ?");
        values.add(today);
        values.add(today.plusDays(SOON_DAYS));
      }
      case "unknown" ->
          sql.append(" and h.certified_until is null and h.state not in ('ordered', 'retired')");
      default -> {}
    }
  }

  private static void equal(StringBuilder sql, List<Object> values, String column, String value) {
    if (!value.isEmpty()) {
      sql.append(" and h.").append(column).append(" = ?");
      values.add(value);
    }
  }
}
