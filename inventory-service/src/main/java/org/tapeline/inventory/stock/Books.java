package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.database.Database;

/** The books as pages show them: what lies at a place, and the moves of a part. */
@ApplicationScoped
public class Books {
  private static final String LINES =
      """
      select e.item, e.model, sum(e.amount)::int as pieces, c.counted_at
        from ledger_entry e
        left join stock_counted c
               on c.place = ? and c.item = e.item and c.model = e.model
       where e.account = ?
       group by e.item, e.model, c.counted_at
       order by e.item, e.model
      """;

  /** The other account of an entry: every move has two. */
  private static final String MOVES =
      """
      select * from (
        select m.nr, m.at, m.why, m.reason, m.done_by, e.model, e.amount, o.account as other,
               sum(e.amount) over (order by m.nr, e.model)::int as after
          from ledger_entry e
          join ledger_move m on m.id = e.move
          join ledger_entry o on o.move = e.move and o.item = e.item and o.model = e.model
                             and o.account <> e.account
         where e.account = ? and e.item = ? and (? = '*' or e.model = ?)) as moves
       order by nr desc, model desc limit ?
      """;

  private final Database database;

  Books(Database database) {
    this.database = database;
  }

  /** A part that is or was at a place, with the time of its newest count. */
  public record Line(String item, String model, int pieces, Optional<Instant> countedAt) {}

  /**
   * A move as one account saw it.
   *
   * @param other the account at the other end
   * @param amount pieces that came, or with a minus went
   * @param after what the books had after it
   */
  public record Entry(
      long nr,
      Instant at,
      String why,
      String reason,
      String by,
      String model,
      String other,
      int amount,
      int after) {
    public String otherSaid() {
      return Move.said(other);
    }
  }

  public List<Line> at(String place) {
    return database.list(
        LINES,
        row ->
            new Line(
                row.getString("item"),
                row.getString("model"),
                row.getInt("pieces"),
                row.getObject("counted_at") == null
                    ? Optional.empty()
                    : Optional.of(Database.instant(row, "counted_at"))),
        place,
        Move.place(place));
  }

  /**
   * The newest first.
   *
   * @param model empty for what is kept for any, {@code *} for all together
   */
  public List<Entry> moves(String place, String item, String model, int most) {
    return database.list(
        MOVES,
        row ->
            new Entry(
                row.getLong("nr"),
                Database.instant(row, "at"),
                row.getString("why"),
                row.getString("reason"),
                row.getString("done_by"),
                row.getString("model"),
                row.getString("other"),
                row.getInt("amount"),
                row.getInt("after")),
        Move.place(place),
        item,
        model,
        model,
        most);
  }
}
