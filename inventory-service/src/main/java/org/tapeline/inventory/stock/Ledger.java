package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;

/** The tables of the books; always in the caller's transaction. */
@ApplicationScoped
public class Ledger {
  private final Database database;
  private final ShelfWatch watch;

  Ledger(Database database, ShelfWatch watch) {
    this.database = database;
    this.watch = watch;
  }

  /** Why a move was made, in words for the books; the reason and the person may be empty. */
  record Because(String why, String reason, String by) {
    static Because of(String why) {
      return new Because(why, "", "");
    }
  }

  /** Only one transaction at a time books that part at that place. */
  void lock(String place, String item) {
    database.lock("stock " + place + " " + item);
  }

  int pieces(String place, String item, String model) {
    return shelf(place, item).pieces().getOrDefault(model, 0);
  }

  Shelf shelf(String place, String item) {
    Map<String, Integer> pieces = new TreeMap<>();
    database.list(
        "select model, sum(amount)::int from ledger_entry where account = ? and item = ? group by"
            + " 1",
        row -> pieces.put(row.getString(1), row.getInt(2)),
        Move.place(place),
        item);
    return new Shelf(pieces);
  }

  /** What was set before for the same reason: the same file again must change nothing. */
  int opened(String place, String item, String model, String why) {
    return database
        .first(
            "select coalesce(sum(e.amount), 0) from ledger_entry e"
                + " join ledger_move m on m.id = e.move"
                + " where e.account = ? and e.item = ? and e.model = ? and m.why = ?",
            row -> row.getInt(1),
            Move.place(place),
            item,
            model,
            why)
        .orElse(0);
  }

  /** Books it; the id follows from the cause, so that the same step makes the same one. */
  UUID book(Move move, Because because, Cause cause, String place, Instant now) {
    UUID id = DerivedId.from(cause.id(), cause.step() + "/" + place);
    book(id, move, because, cause, now);
    return id;
  }

  void book(UUID id, Move move, Because because, Cause cause, Instant now) {
    database.change(
        "insert into ledger_move (id, why, reason, done_by, at) values (?, ?, ?, ?, ?)",
        id,
        because.why(),
        because.reason(),
        because.by(),
        now);
    for (Move.Entry entry : move.entries()) {
      database.change(
          "insert into ledger_entry (move, account, item, model, amount) values (?, ?, ?, ?, ?)",
          id,
          entry.account(),
          entry.item(),
          entry.model(),
          entry.amount());
      if (entry.amount() < 0) {
        Move.placeOf(entry.account()).ifPresent(lower -> watch.lowered(lower, entry.item(), cause));
      }
    }
  }

  /** Keeps what was counted as the newest count of it. */
  void counted(StockEvent.StockCounted c) {
    database.change(
        """
        insert into stock_counted
            (place, item, model, counted, variance, counted_by, counted_at)
          values (?, ?, ?, ?, ?, ?, ?)
          on conflict (place, item, model) do update
          set counted = excluded.counted, variance = excluded.variance,
              counted_by = excluded.counted_by, counted_at = excluded.counted_at
        """,
        c.place(),
        c.item(),
        c.model().orElse(Shelf.ANY),
        c.counted(),
        c.variance(),
        c.by(),
        c.at());
  }
}
