package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;

/** Helmets as lists and single ones show them. */
@ApplicationScoped
public class HelmetViews {
  private final Database database;

  HelmetViews(Database database) {
    this.database = database;
  }

  /**
   * A helmet now.
   *
   * @param state ordered, available, reserved, issued, quarantined, held, at-reconditioner or
   *     retired
   * @param lot empty, as is the day of manufacture, while it is only ordered
   * @param player who has it
   */
  public record View(
      String tag,
      String model,
      String size,
      String lot,
      Optional<LocalDate> manufacturedOn,
      Optional<LocalDate> certifiedUntil,
      String place,
      String state,
      Optional<UUID> player) {}

  /** What is looked for; what is empty does not matter. */
  public record Filter(String place, String model, String size, String state) {
    public Filter {
      place = place == null ? "" : place.strip();
      model = model == null ? "" : model.strip();
      size = size == null ? "" : size.strip();
      state = state == null ? "" : state.strip();
    }
  }

  /**
   * @param places only helmets at these, or of players who are fitted there; empty for all
   */
  public List<View> list(Filter filter, Optional<List<String>> places, int limit) {
    StringBuilder sql = new StringBuilder("select h.* from helmet h where true");
    List<Object> values = new ArrayList<>();
    add(sql, values, "place", filter.place());
    add(sql, values, "model", filter.model());
    add(sql, values, "size", filter.size());
    if (filter.state().equals("reserved")) {
      sql.append(" and reserved_for is not null");
    } else {
      add(sql, values, "state", filter.state());
      sql.append(filter.state().equals("available") ? " and reserved_for is null" : "");
    }
    places.ifPresent(
        own -> {
          sql.append(" and (place = any (string_to_array(?, ',')) or holder in (select player");
          sql.append(" from player_field where field = any (string_to_array(?, ','))))");
          values.add(String.join(",", own));
          values.add(String.join(",", own));
        });
    sql.append(" order by place, model, size, tag limit ").append(limit);
    return database.list(sql.toString(), HelmetViews::read, values.toArray());
  }

  private static void add(StringBuilder sql, List<Object> values, String column, String value) {
    if (!value.isEmpty()) {
      sql.append(" and h.").append(column).append(" = ?");
      values.add(value);
    }
  }

  public Optional<View> find(String tag) {
    return database.first("select * from helmet where tag = ?", HelmetViews::read, tag);
  }

  public List<String> sizes() {
    return database.list("select distinct size from helmet order by 1", row -> row.getString(1));
  }

  public List<String> models() {
    return database.list("select distinct model from helmet order by 1", row -> row.getString(1));
  }

  static View read(ResultSet row) throws SQLException {
    return new View(
        row.getString("tag"),
        row.getString("model"),
        row.getString("size"),
        row.getString("lot"),
        Optional.ofNullable(row.getObject("manufactured_on", LocalDate.class)),
        Optional.ofNullable(row.getObject("certified_until", LocalDate.class)),
        row.getString("place"),
        row.getObject("reserved_for", UUID.class) == null ? row.getString("state") : "reserved",
        Optional.ofNullable(row.getObject("holder", UUID.class)));
  }
}
