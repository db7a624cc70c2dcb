package org.tapeline.inventory.allocation;

import com.fasterxml.jackson.core.JsonProcessingException;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.EventJson;

/** Plans with their lines; many lines go in with one statement. */
@ApplicationScoped
public class PlanStore {
  private static final String INSERT_LINES =
      """
      insert into plan_line (plan, player, field, tag, model, size, place, liking, minutes)
      select ?, r.* from json_to_recordset(?::json) as r(player uuid, field text, tag text,
        model text, size text, place text, liking text, minutes integer)
      """;

  private final Database database;

  PlanStore(Database database) {
    this.database = database;
  }

  void save(Plan p, List<PlanLine> lines, List<Reason> left) {
    database.change(
        "insert into plan values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, null, null)",
        p.plan(),
        p.state().name().toLowerCase(Locale.ROOT),
        EventJson.MAPPER.valueToTree(p.wish().withoutPlayers()).toString(),
        p.fingerprint(),
        p.policyVersion(),
        p.seekers(),
        p.helmets(),
        p.served(),
        p.minutes(),
        p.cost(),
        p.leastPossible(),
        p.madeBy(),
        p.madeAt());
    database.change(INSERT_LINES, p.plan(), EventJson.MAPPER.valueToTree(lines).toString());
    database.change(
        "insert into plan_left (plan, ordinal, field, players, reason, helps)"
            + " select ?, row_number() over (), r.* from json_to_recordset(?::json)"
            + " as r(field text, players integer, reason text, helps text)",
        p.plan(),
        EventJson.MAPPER.valueToTree(left).toString());
  }

  Optional<Plan> find(UUID plan) {
    return database.first("select * from plan where plan = ?", PlanStore::read, plan);
  }

  /** The same, and it cannot change until the transaction ends. */
  Optional<Plan> locked(UUID plan) {
    return database.first("select * from plan where plan = ? for update", PlanStore::read, plan);
  }

  /** The newest first. */
  List<Plan> newest(int limit) {
    return database.list(
        "select * from plan order by made_at desc, plan limit ?", PlanStore::read, limit);
  }

  List<PlanLine> lines(UUID plan) {
    return database.list(
        "select * from plan_line where plan = ? order by field, place, model, size, tag",
        row ->
            new PlanLine(
                row.getObject("player", UUID.class),
                row.getString("field"),
                row.getString("tag"),
                row.getString("model"),
                row.getString("size"),
                row.getString("place"),
                row.getString("liking"),
                row.getInt("minutes"),
                Optional.ofNullable(row.getString("outcome"))),
        plan);
  }

  List<Reason> left(UUID plan) {
    return database.list(
        "select * from plan_left where plan = ? order by ordinal",
        row ->
            new Reason(
                row.getString("field"),
                row.getInt("players"),
                row.getString("reason"),
                row.getString("helps")),
        plan);
  }

  private static Plan read(ResultSet row) throws SQLException {
    return new Plan(
        row.getObject("plan", UUID.class),
        Plan.State.valueOf(row.getString("state").toUpperCase(Locale.ROOT)),
        wish(row.getString("wish")),
        row.getString("fingerprint"),
        row.getInt("policy_version"),
        row.getInt("seekers"),
        row.getInt("helmets"),
        row.getInt("served"),
        row.getLong("minutes"),
        row.getLong("cost"),
        row.getLong("least_possible"),
        row.getString("made_by"),
        Database.instant(row, "made_at"),
        instant(row, "committed_at"),
        instant(row, "kept_until"));
  }

  private static PlanWish wish(String json) {
    try {
      return EventJson.MAPPER.readValue(json, PlanWish.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A plan's wish cannot be read", e);
    }
  }

  private static Optional<Instant> instant(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getObject(column, OffsetDateTime.class))
        .map(OffsetDateTime::toInstant);
  }
}
