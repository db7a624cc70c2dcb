package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.restock.RestockWatch.Waits;

/** The re-fit cases with what they need, as fitting tells of them. */
@ApplicationScoped
public class Cases {
  private static final String SELECT =
      "select c.refit_case, c.player, c.field, n.kind, n.model, n.size, n.item"
          + " from refit_case c join case_need n on n.refit_case = c.refit_case";

  private final Database database;

  Cases(Database database) {
    this.database = database;
  }

  /** A need of an open case. */
  public record Open(UUID refitCase, UUID player, String field, Need need) {}

  void open(
      UUID refitCase, UUID player, String field, String urgency, List<Need> needs, Instant at) {
    database.change(
        "insert into refit_case values (?, ?, ?, ?, ?, true) on conflict do nothing",
        refitCase,
        player,
        field,
        urgency,
        at);
    for (Need need : needs) {
      database.change(
          "insert into case_need values (?, ?, ?, ?, ?, ?, 'waiting', ?) on conflict do nothing",
          refitCase,
          need.key(),
          need.kind(),
          need.model().orElse(null),
          need.size().orElse(null),
          need.item().orElse(null),
          at);
    }
  }

  void close(UUID refitCase) {
    database.change("update refit_case set open = false where refit_case = ?", refitCase);
    database.change("update case_need set status = 'done' where refit_case = ?", refitCase);
  }

  List<Open> waitingOf(UUID refitCase) {
    return database.list(
        SELECT
            + " where c.open and c.refit_case = ? and n.status = 'waiting'"
            + " order by n.need_key for update of n",
        Cases::read,
        refitCase);
  }

  /** Who waits for it: the urgent first, then who has waited longest. */
  List<Open> waitingFor(String needKey) {
    return database.list(
        SELECT
            + " where c.open and n.need_key = ? and n.status = 'waiting'"
            + " order by c.urgency = 'do-not-wear' desc, n.waiting_since, c.refit_case"
            + " for update of n skip locked",
        Cases::read,
        needKey);
  }

  Optional<Open> find(UUID refitCase, String needKey) {
    return database.first(
        SELECT + " where c.open and c.refit_case = ? and n.need_key = ?",
        Cases::read,
        refitCase,
        needKey);
  }

  boolean waits(Waits waits) {
    return database
        .first(
            "select 1 from refit_case c join case_need n on n.refit_case = c.refit_case"
                + " where c.open and c.refit_case = ? and n.need_key = ? and n.status = 'waiting'",
            row -> true,
            waits.refitCase(),
            waits.needKey())
        .isPresent();
  }

  List<String> keysOf(UUID refitCase) {
    return database.list(
        "select need_key from case_need where refit_case = ? order by need_key",
        row -> row.getString(1),
        refitCase);
  }

  void mark(UUID refitCase, String needKey, String status) {
    database.change(
        "update case_need set status = ? where refit_case = ? and need_key = ?",
        status,
        refitCase,
        needKey);
  }

  void waitFrom(UUID refitCase, String needKey, Instant since) {
    database.change(
        "update case_need set waiting_since = ? where refit_case = ? and need_key = ?",
        since,
        refitCase,
        needKey);
  }

  private static Open read(ResultSet row) throws SQLException {
    return new Open(
        row.getObject("refit_case", UUID.class),
        row.getObject("player", UUID.class),
        row.getString("field"),
        new Need(
            row.getString("kind"),
            Optional.ofNullable(row.getString("model")),
            Optional.ofNullable(row.getString("size")),
            Optional.ofNullable(row.getString("item"))));
  }
}
