package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.hold.HoldLift.Meant;
import org.tapeline.journal.Cause;

/** The helmets of each hold: which it concerns, and what is still to be done with them. */
@ApplicationScoped
public class HoldHelmets {
  /** Helmets that criteria concern; whoever uses one meanwhile is waited for, and sees it then. */
  private static final String CONCERN =
      """
      insert into hold_helmet (hold, tag, player, place, step)
      select o.hold, h.tag, h.holder, h.place, 'due' from helmet h join hold o on o.hold = ?
       where h.state not in ('ordered', 'retired')
         and (h.tag in (select tag from hold_tag where hold = o.hold)
              or hold_covers(o.model, o.lots, o.made_from, o.made_to,
                             h.model, h.lot, h.manufactured_on))
       order by h.tag for no key update of h
      """;

  /** What is shown of them runs ahead of their records: nobody finds one that is free. */
  private static final String OUT_OF_REACH =
      """
      update helmet set state = 'held', on_hold = true, reserved_for = null
       where state = 'available'
         and tag in (select tag from hold_helmet where hold = ? and step = 'due')
      """;

  /** Of its scope; what is not known of a helmet keeps it held. */
  private static final String OF_SCOPE =
      """
       from helmet h where h.tag = d.tag and d.hold = ? and d.step = 'held'
        and (? = 'whole' or h.lot = any (string_to_array(?, ',')) or h.place = ?
             or h.tag = any (string_to_array(?, ',')))
      """;

  private final Database database;

  HoldHelmets(Database database) {
    this.database = database;
  }

  /** A helmet with which something is still to be done, and what it follows from. */
  record Work(UUID hold, String tag, String step, Cause cause) {}

  /** Marks all that the hold concerns, and takes those that are free out of reach. */
  int concern(UUID hold) {
    int helmets = database.change(CONCERN, hold);
    database.change(OUT_OF_REACH, hold);
    return helmets;
  }

  int worn(UUID hold) {
    return database
        .first(
            "select count(*) from hold_helmet where hold = ? and player is not null",
            row -> row.getInt(1),
            hold)
        .orElse(0);
  }

  Set<UUID> players(UUID hold) {
    return new TreeSet<>(
        database.list(
            "select distinct player from hold_helmet where hold = ? and player is not null",
            row -> row.getObject(1, UUID.class),
            hold));
  }

  /** Marks those of the scope to be freed; how many there are. */
  int free(UUID hold, Meant lift, UUID event, UUID correlation) {
    return database.change(
        "update hold_helmet d set step = 'freeing', freed_by = ?, correlation = ?" + OF_SCOPE,
        event,
        correlation,
        hold,
        lift.scope(),
        lift.lotList(),
        lift.place(),
        lift.tagList());
  }

  /** The tags of the scope that are held. */
  List<String> inScope(UUID hold, Meant lift) {
    return database.list(
        "select h.tag from helmet h, hold_helmet d "
            + OF_SCOPE.replaceFirst("from helmet h where", "where")
            + " order by h.tag",
        row -> row.getString(1),
        hold,
        lift.scope(),
        lift.lotList(),
        lift.place(),
        lift.tagList());
  }

  /** What is next: helmets that players have before the rest. */
  List<Work> next(String step, int most, int after) {
    return database.list(
        """
        select d.*, o.event as placed, o.correlation as first
          from hold_helmet d join hold o on o.hold = d.hold
         where d.step = ? order by (d.player is null), d.tag limit ? offset ?
        """,
        row -> {
          UUID hold = row.getObject("hold", UUID.class);
          boolean due = row.getString("step").equals("due");
          UUID id = row.getObject(due ? "placed" : "freed_by", UUID.class);
          UUID correlation = row.getObject(due ? "first" : "correlation", UUID.class);
          Cause cause = new Cause(id, correlation, row.getString("step"));
          return new Work(hold, row.getString("tag"), row.getString("step"), cause);
        },
        step,
        most,
        after);
  }

  /** Those of the tags with which it is still to be done; asked once the helmets are locked. */
  Set<String> still(UUID hold, String step, List<String> tags) {
    return new TreeSet<>(
        database.list(
            "select tag from hold_helmet where hold = ? and step = ?"
                + " and tag = any (string_to_array(?, ','))",
            row -> row.getString(1),
            hold,
            step,
            String.join(",", tags)));
  }

  /** Nothing was to be done with what is left of them, such as a helmet that was retired. */
  void done(UUID hold, String step, Set<String> tags) {
    database.change(
        "update hold_helmet set step = ? where hold = ? and step = ?"
            + " and tag = any (string_to_array(?, ','))",
        step.equals("due") ? "held" : "freed",
        hold,
        step,
        String.join(",", tags));
  }

  /** Whether the helmet is under the hold; false when it is not. */
  boolean putAside(UUID hold, String tag, String by, Instant at) {
    return database.change(
            "update hold_helmet set put_aside_by = ?, put_aside_at = ? where hold = ? and tag = ?"
                + " and step in ('due', 'held') and put_aside_at is null",
            by,
            at,
            hold,
            tag)
        > 0;
  }
}
