package org.tapeline.inventory.stock;

import java.util.Optional;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.restock.RestockAsked;
import org.tapeline.inventory.restock.RestockEvent.RestockReceived;
import org.tapeline.inventory.stock.Ledger.Because;
import org.tapeline.inventory.stock.StockEvent.PartMoved;
import org.tapeline.inventory.stock.StockEvent.PartUsed;
import org.tapeline.inventory.stock.StockEvent.StockCounted;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;

/**
 * Books again what the journal tells, event by event and under the same ids. Which model's stock
 * was taken is followed by the rule where the event does not say it.
 */
final class LedgerReplay {
  /** The parts of one fit are numbered as they were used. */
  private static final String USED_BEFORE =
      "select count(*) from journal where correlation_id = ? and causation_id = ?"
          + " and type like 'org.tapeline.inventory.part-used.v%' and position < ?";

  private final Ledger ledger;
  private final Journal journal;
  private final Database database;

  LedgerReplay(Ledger ledger, Journal journal, Database database) {
    this.ledger = ledger;
    this.journal = journal;
    this.database = database;
  }

  void show(RecordedEvent event) {
    switch (event.data()) {
      case StockCounted e -> counted(e, event);
      case PartUsed e -> used(e, event);
      case PartMoved e -> {
        Move move = new Move(e.from(), e.to(), e.item(), e.model().orElse(Shelf.ANY), e.quantity());
        Because because = new Because("moved", e.why(), e.by());
        ledger.book(e.move(), move, because, cause(event, ""), e.at());
      }
      case RestockReceived e -> received(e, event);
      default -> throw new IllegalArgumentException("Moves no parts: " + event.type());
    }
  }

  private void counted(StockCounted e, RecordedEvent event) {
    String model = e.model().orElse(Shelf.ANY);
    if (e.variance() != 0) {
      String from = e.reason().orElse(e.why());
      Move move =
          new Move(Move.outside(from), Move.place(e.place()), e.item(), model, e.variance());
      Because because = new Because(e.why(), e.reason().orElse(""), e.by());
      Cause cause = cause(event, "count-" + e.item() + "-" + model);
      ledger.book(move, because, cause, e.place(), e.at());
    }
    ledger.counted(e);
  }

  private void used(PartUsed e, RecordedEvent event) {
    int nth =
        database
            .first(
                USED_BEFORE,
                row -> row.getInt(1),
                event.correlationId(),
                event.causationId(),
                event.position())
            .orElse(0);
    String from =
        e.keptFor()
            .map(keptFor -> keptFor.equals("any") ? Shelf.ANY : keptFor)
            .orElseGet(() -> ledger.shelf(e.place(), e.item()).fullest());
    Move move = new Move(Move.place(e.place()), Move.outside("used"), e.item(), from, e.quantity());
    Cause cause = cause(event, "use-" + e.item() + "-" + nth);
    ledger.book(move, Because.of("used"), cause, e.place(), event.time());
  }

  /** What came damaged from outside never was in stock; from another place it is written off. */
  private void received(RestockReceived e, RecordedEvent event) {
    RestockAsked asked = RestockAsked.of(journal, e);
    if (asked.ofHelmet()) {
      return;
    }
    String item = asked.item();
    Optional<String> from = asked.fromPlace();
    if (e.quantity() > 0) {
      String step = (from.isPresent() ? "transfer-" : "receive-") + item;
      Move move =
          new Move(
              from.map(Move::place).orElseGet(() -> Move.outside("supplier")),
              Move.place(e.place()),
              item,
              from.map(place -> ledger.shelf(place, item).fullest()).orElse(Shelf.ANY),
              e.quantity());
      Because because = Because.of(from.isPresent() ? "transfer" : "restock");
      ledger.book(move, because, cause(event, step), e.place(), e.at());
    }
    if (e.damaged() > 0 && from.isPresent()) {
      String model = ledger.shelf(from.get(), item).fullest();
      Move move =
          new Move(Move.place(from.get()), Move.outside("damaged"), item, model, e.damaged());
      Cause cause = cause(event, "write-off-" + item);
      ledger.book(move, Because.of("damaged"), cause, from.get(), e.at());
    }
  }

  private static Cause cause(RecordedEvent event, String step) {
    return new Cause(event.causationId(), event.correlationId(), step);
  }
}
