package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.compat.CompatibilityTable;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Parts that were fitted to a helmet for which they are not listed: for the equipment manager. */
@Named("partChecks")
@ApplicationScoped
public class PartChecks {
  private static final int MOST = 200;

  private final Database database;
  private final CompatibilityTable compatibility;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;

  PartChecks(
      Database database,
      CompatibilityTable compatibility,
      CommandLog commands,
      Caller caller,
      Clock clock) {
    this.database = database;
    this.compatibility = compatibility;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
  }

  /** A thing to check: which part in which helmet, since when. */
  public record ToCheck(
      UUID session, String item, String place, String tag, String model, Instant usedAt) {}

  /** That it was looked at. */
  public record Checked(UUID session, String item) {}

  /** Notes the part when it is not listed for that model; the same again is noted once. */
  void look(UUID session, String place, String item, String tag, String model, Instant at) {
    if (!compatibility.inForce().fits(item, model)) {
      database.change(
          "insert into part_to_check (session, item, place, tag, model, used_at)"
              + " values (?, ?, ?, ?, ?, ?) on conflict do nothing",
          session,
          item,
          place,
          tag,
          model,
          at);
    }
  }

  /** What nobody has looked at, the oldest first. */
  public List<ToCheck> open() {
    return database.list(
        "select * from part_to_check where checked_at is null order by used_at, session, item"
            + " limit "
            + MOST,
        row ->
            new ToCheck(
                row.getObject("session", UUID.class),
                row.getString("item"),
                row.getString("place"),
                row.getString("tag"),
                row.getString("model"),
                Database.instant(row, "used_at")));
  }

  public Answer checked(UUID session, String item, UUID id) {
    Checked which = new Checked(session, item);
    return commands.once(
        id,
        "part-checked",
        which,
        () -> {
          database
              .first(
                  "select 1 from part_to_check where session = ? and item = ?",
                  row -> 1,
                  session,
                  item)
              .orElseThrow(() -> Problem.notFound("There is no such part to check."));
          database.change(
              "update part_to_check set checked_by = ?, checked_at = ?"
                  + " where session = ? and item = ? and checked_at is null",
              caller.id(),
              clock.instant(),
              session,
              item);
          return Answer.of(200, which);
        });
  }
}
