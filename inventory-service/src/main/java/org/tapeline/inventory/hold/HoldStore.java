package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Cause;

/** The holds as they stand. */
@ApplicationScoped
public class HoldStore {
  private static final String INSERT =
      """
      insert into hold (hold, reason, reference, model, lots, made_from, made_to, matching, worn,
                        placed_by, placed_at, event, correlation)
      values (?, ?, ?, ?, string_to_array(?, ','), ?, ?, 0, 0, ?, ?, ?, ?)
      """;
  private static final String SELECT =
      """
      select o.*, (select count(*) from hold_tag t where t.hold = o.hold) as tags,
             count(*) filter (where d.step = 'due') as due,
             count(*) filter (where d.step = 'held') as held,
             count(*) filter (where d.step = 'freeing') as freeing,
             count(*) filter (where d.step = 'freed') as freed,
             count(*) filter (where d.step in ('due', 'held') and d.put_aside_at is not null)
               as put_aside
        from hold o left join hold_helmet d on d.hold = o.hold
      """;

  private final Database database;

  HoldStore(Database database) {
    this.database = database;
  }

  void insert(UUID hold, HoldAsk ask, HoldCriteria c, String by, Instant at, Cause cause) {
    database.change(
        INSERT,
        hold,
        ask.reason(),
        ask.reference(),
        c.model().orElse(null),
        String.join(",", c.lots()),
        c.madeFrom().orElse(null),
        c.madeTo().orElse(null),
        by,
        at,
        cause.id(),
        cause.correlationId());
    database.change(
        "insert into hold_tag (tag, hold) select unnest(string_to_array(?, ',')), ?",
        String.join(",", c.tags()),
        hold);
  }

  /** How many it concerns, once that is known. */
  void counted(UUID hold, int matching, int worn) {
    database.change("update hold set matching = ?, worn = ? where hold = ?", matching, worn, hold);
  }

  void lifted(UUID hold, HoldLift.Meant lift, Instant at) {
    if (lift.scope().equals("whole")) {
      database.change("update hold set open = false, lifted_at = ? where hold = ?", at, hold);
    }
    if (lift.scope().equals("lots")) {
      database.change(
          "update hold set lifted_lots = lifted_lots || string_to_array(?, ',') where hold = ?",
          lift.lotList(),
          hold);
    }
  }

  /** The newest first. */
  List<Hold> all() {
    return database.list(
        SELECT + " group by o.hold order by o.open desc, o.placed_at desc", HoldStore::read);
  }

  Optional<Hold> find(UUID hold) {
    return database.first(SELECT + " where o.hold = ? group by o.hold", HoldStore::read, hold);
  }

  /** Nobody else changes it until the transaction ends. */
  void lock(UUID hold) {
    database.list("select 1 from hold where hold = ? for update", row -> 1, hold);
  }

  /** What the next hold follows from for which replacements were not looked for yet. */
  Optional<Cause> unplanned() {
    return database.first(
        "select event, correlation from hold where not planned order by placed_at limit 1",
        row ->
            new Cause(
                row.getObject("event", UUID.class),
                row.getObject("correlation", UUID.class),
                "plan"));
  }

  void planned(UUID hold) {
    database.change("update hold set planned = true where hold = ?", hold);
  }

  Optional<UUID> placedBy(UUID event) {
    return database.first(
        "select hold from hold where event = ?", row -> row.getObject(1, UUID.class), event);
  }

  private static Hold read(ResultSet row) throws SQLException {
    return new Hold(
        row.getObject("hold", UUID.class),
        row.getString("reason"),
        row.getString("reference"),
        Optional.ofNullable(row.getString("model")),
        strings(row, "lots"),
        Optional.ofNullable(row.getObject("made_from", LocalDate.class)),
        Optional.ofNullable(row.getObject("made_to", LocalDate.class)),
        row.getInt("tags"),
        strings(row, "lifted_lots"),
        row.getBoolean("open"),
        row.getInt("matching"),
        row.getInt("worn"),
        row.getString("placed_by"),
        Database.instant(row, "placed_at"),
        Optional.ofNullable(row.getObject("lifted_at", OffsetDateTime.class))
            .map(OffsetDateTime::toInstant),
        row.getInt("due"),
        row.getInt("held"),
        row.getInt("freeing"),
        row.getInt("freed"),
        row.getInt("put_aside"));
  }

  private static List<String> strings(ResultSet row, String column) throws SQLException {
    return List.of((String[]) row.getArray(column).getArray());
  }
}
