package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.StockEvent.PartUsed;
import org.tapeline.inventory.stock.StockEvent.StockCounted;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Keeps the books of parts; always in the caller's transaction. */
@ApplicationScoped
public class StockDesk {
  private final Database database;
  private final Journal journal;
  private final Clock clock;

  StockDesk(Database database, Journal journal, Clock clock) {
    this.database = database;
    this.journal = journal;
    this.clock = clock;
  }

  /** Pieces of a part at a place, for all models together; less than 0 is a fault to look for. */
  public int pieces(String place, String item) {
    return sum(
        "select coalesce(sum(amount), 0) from ledger_entry where account = ? and item = ?",
        Move.place(place),
        item);
  }

  private int pieces(String place, String item, String model) {
    return sum(
        "select coalesce(sum(amount), 0) from ledger_entry"
            + " where account = ? and item = ? and model = ?",
        Move.place(place),
        item,
        model);
  }

  /** What was set before for the same reason: the same file again must change nothing. */
  private int opened(String place, String item, String model, String why) {
    return sum(
        "select coalesce(sum(e.amount), 0) from ledger_entry e join ledger_move m on m.id = e.move"
            + " where e.account = ? and e.item = ? and e.model = ? and m.why = ?",
        Move.place(place),
        item,
        model,
        why);
  }

  private int sum(String sql, Object... values) {
    return database.first(sql, row -> row.getInt(1), values).orElse(0);
  }

  /** Sets what is there at the start; whether that changed anything. */
  boolean count(
      String place, String item, String model, int counted, String why, String by, Cause cause) {
    database.lock("stock " + place + " " + item);
    int variance = counted - opened(place, item, model, why);
    if (variance == 0) {
      return false;
    }
    Cause step = cause.step("count-" + item + "-" + model);
    book(new Move(Move.outside(why), Move.place(place), item, model, variance), why, step, place);
    say(
        new StockCounted(
            place,
            item,
            model.isEmpty() ? Optional.empty() : Optional.of(model),
            Math.max(0, pieces(place, item, model)),
            variance,
            why,
            by,
            clock.instant()),
        step);
    return true;
  }

  /** A part went into a helmet of that model; its own stock first, then that for any model. */
  public void use(String place, String item, String model, UUID session, int nth, Cause cause) {
    database.lock("stock " + place + " " + item);
    boolean own = pieces(place, item, model) > 0 || pieces(place, item, "") <= 0;
    String from = own ? model : "";
    Cause step = cause.step("use-" + item + "-" + nth);
    book(new Move(Move.place(place), Move.outside("used"), item, from, 1), "used", step, place);
    say(new PartUsed(place, item, 1, session), step);
  }

  /** Parts came from outside. */
  public void receive(String place, String item, String model, int quantity, Cause cause) {
    database.lock("stock " + place + " " + item);
    book(
        new Move(Move.outside("supplier"), Move.place(place), item, model, quantity),
        "restock",
        cause.step("receive-" + item),
        place);
  }

  /** Parts went from one of our places to another. */
  public void transfer(String from, String to, String item, int quantity, Cause cause) {
    database.lock("stock " + from + " " + item);
    Move move = new Move(Move.place(from), Move.place(to), item, fullest(from, item), quantity);
    book(move, "transfer", cause.step("transfer-" + item), to);
  }

  /** Parts are spoilt. */
  public void writeOff(String place, String item, int quantity, Cause cause) {
    database.lock("stock " + place + " " + item);
    String model = fullest(place, item);
    Move move = new Move(Move.place(place), Move.outside("damaged"), item, model, quantity);
    book(move, "damaged", cause.step("write-off-" + item), place);
  }

  private String fullest(String from, String item) {
    return database
        .first(
            "select model from ledger_entry where account = ? and item = ?"
                + " group by model order by sum(amount) desc limit 1",
            row -> row.getString(1),
            Move.place(from),
            item)
        .orElse("");
  }

  private void book(Move move, String why, Cause cause, String place) {
    UUID id = DerivedId.from(cause.id(), cause.step() + "/" + place);
    database.change(
        "insert into ledger_move (id, why, at) values (?, ?, ?)", id, why, clock.instant());
    for (Move.Entry entry : move.entries()) {
      database.change(
          "insert into ledger_entry (move, account, item, model, amount) values (?, ?, ?, ?, ?)",
          id,
          entry.account(),
          entry.item(),
          entry.model(),
          entry.amount());
    }
  }

  private void say(StockEvent event, Cause cause) {
    StreamName stream = StreamName.of("stock", event.place(), event.place());
    database.lock("stream " + stream.text());
    int version = journal.load(stream).size();
    journal.append(stream, version, List.of((Record) event), cause);
  }
}
