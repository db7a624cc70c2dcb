package org.tapeline.inventory.stock;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.restock.RestockEvent.RestockReceived;
import org.tapeline.journal.Journal;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** The books of parts and the newest counts; nobody looks at a shelf for it. */
@Singleton
class StockReadModel {
  @Produces
  @Singleton
  ReadModel stock(Database database, Journal journal) {
    Ledger unwatched = new Ledger(database, (place, item, cause) -> {});
    LedgerReplay replay = new LedgerReplay(unwatched, journal, database);
    return ReadModel.of(
            "stock",
            // Some thousandths of a second beside the event's time, and a number in order of them.
            ReadTable.of("ledger_move").keeping("at", "nr"),
            ReadTable.of("ledger_entry"),
            ReadTable.of("stock_counted"))
        .fromJournal(StockEvent.class, replay::show)
        .fromJournal(RestockReceived.class, replay::show);
  }
}
