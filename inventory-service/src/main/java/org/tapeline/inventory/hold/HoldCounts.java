package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.hold.HoldPreview.Count;
import org.tapeline.inventory.hold.HoldPreview.OfKind;

/** Counts what criteria concern, before anything is done. */
@ApplicationScoped
public class HoldCounts {
  /** {@link HoldCriteria#covers}, said to the database; a test holds the two together. */
  private static final String CONCERNED =
      """
      with concerned as (
        select * from helmet h where state not in ('ordered', 'retired')
           and (tag = any (string_to_array(?, ','))
                or hold_covers(?, string_to_array(?, ','), ?, ?, model, lot, manufactured_on)))
      """;

  private static final String BY_KIND =
      """
      select c.model, c.size, count(*) as helmets, count(c.holder) as worn,
             (select count(*) from helmet f where f.model = c.model and f.size = c.size
                 and f.state = 'available' and f.reserved_for is null and f.planned_for is null
                 and (f.certified_until is null or f.certified_until >= ?)
                 and not exists (select 1 from concerned n where n.tag = f.tag)) as free
        from concerned c group by c.model, c.size order by c.model, c.size
      """;

  private final Database database;
  private final Clock clock;

  HoldCounts(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  HoldPreview of(HoldCriteria criteria) {
    List<Integer> totals =
        database
            .first(
                CONCERNED
                    + "select count(*), count(distinct holder), count(reserved_for),"
                    + " count(*) filter (where lot = 'not-stated') from concerned",
                row -> List.of(row.getInt(1), row.getInt(2), row.getInt(3), row.getInt(4)),
                values(criteria))
            .orElseThrow();
    return new HoldPreview(
        totals.get(0),
        totals.get(1),
        totals.get(2),
        criteria.lots().isEmpty() ? 0 : totals.get(3),
        unknownTags(criteria),
        counts("state", criteria),
        counts("place", criteria),
        byKind(criteria));
  }

  /** The tags that are concerned. */
  List<String> tags(HoldCriteria criteria) {
    return database.list(
        CONCERNED + "select tag from concerned order by tag",
        row -> row.getString(1),
        values(criteria));
  }

  private int unknownTags(HoldCriteria criteria) {
    return database
        .first(
            "select count(*) from unnest(string_to_array(?, ',')) as t (tag)"
                + " where not exists (select 1 from helmet h where h.tag = t.tag)",
            row -> row.getInt(1),
            String.join(",", criteria.tags()))
        .orElse(0);
  }

  private List<Count> counts(String column, HoldCriteria criteria) {
    String sql = CONCERNED + "select %s, count(*) from concerned group by 1 order by 2 desc, 1";
    return database.list(
        sql.replace("%s", column),
        row -> new Count(row.getString(1), row.getInt(2)),
        values(criteria));
  }

  private List<OfKind> byKind(HoldCriteria criteria) {
    List<Object> values = new ArrayList<>(Arrays.asList(values(criteria)));
    values.add(LocalDate.now(clock.withZone(ZoneOffset.UTC)));
    return database.list(
        CONCERNED + BY_KIND,
        row ->
            new OfKind(
                row.getString("model"),
                row.getString("size"),
                row.getInt("helmets"),
                row.getInt("worn"),
                row.getInt("free")),
        values.toArray());
  }

  private static Object[] values(HoldCriteria c) {
    return new Object[] {
      String.join(",", c.tags()),
      c.model().orElse(null),
      String.join(",", c.lots()),
      c.madeFrom().orElse(null),
      c.madeTo().orElse(null)
    };
  }
}
