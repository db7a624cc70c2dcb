package org.tapeline.inventory.books;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.restock.RestockEvent;
import org.tapeline.inventory.restock.RestockEvent.RestockReceived;
import org.tapeline.inventory.restock.RestockEvent.RestockRequested;
import org.tapeline.inventory.stock.Balances;
import org.tapeline.inventory.stock.Move;
import org.tapeline.inventory.stock.Shelf;
import org.tapeline.inventory.stock.StockEvent;
import org.tapeline.inventory.stock.StockEvent.PartMoved;
import org.tapeline.inventory.stock.StockEvent.PartUsed;
import org.tapeline.inventory.stock.StockEvent.StockCounted;

/**
 * The books of parts made anew from what was said: each event of the journal in its order. Which
 * model's stock a transfer took is not said; there the rule by which it was taken is followed
 * again, so that only the sum over the models is certain.
 */
public final class Replay {
  private final Balances balances = new Balances();
  private final Map<UUID, RestockRequested> asked = new HashMap<>();

  public Balances balances() {
    return balances;
  }

  /** Takes the next event; one that moves no parts changes nothing. */
  public void add(Record event) {
    if (event instanceof StockEvent stock) {
      book(stock);
    } else if (event instanceof RestockEvent restock) {
      book(restock);
    }
  }

  private void book(StockEvent event) {
    switch (event) {
      case StockCounted e -> {
        if (e.variance() != 0) {
          String why = e.reason().orElse(e.why());
          String model = e.model().orElse(Shelf.ANY);
          balances.book(
              new Move(Move.outside(why), Move.place(e.place()), e.item(), model, e.variance()));
        }
      }
      case PartUsed e ->
          balances.book(
              new Move(
                  Move.place(e.place()), Move.outside("used"), e.item(), keptFor(e), e.quantity()));
      case PartMoved e ->
          balances.book(
              new Move(e.from(), e.to(), e.item(), e.model().orElse(Shelf.ANY), e.quantity()));
    }
  }

  /** Old ones do not say which stock was taken. */
  private String keptFor(PartUsed e) {
    Optional<String> said = e.keptFor().map(k -> k.equals("any") ? Shelf.ANY : k);
    return said.orElseGet(() -> balances.shelf(e.place(), e.item()).fullest());
  }

  /** Of a request, what was asked for and what came; the steps between move nothing. */
  private void book(RestockEvent event) {
    if (event instanceof RestockRequested e) {
      asked.put(e.request(), e);
    } else if (event instanceof RestockReceived e) {
      received(e, asked.get(e.request()));
    }
  }

  /** What came damaged from outside never was in stock; from another place it is written off. */
  private void received(RestockReceived e, RestockRequested request) {
    if (request == null || request.item().startsWith("helmet:")) {
      return;
    }
    String item = request.item();
    if (request.fromPlace().isEmpty()) {
      move(Move.outside("supplier"), Move.place(e.place()), item, Shelf.ANY, e.quantity());
      return;
    }
    String from = request.fromPlace().get();
    move(Move.place(from), Move.place(e.place()), item, fullest(from, item), e.quantity());
    move(Move.place(from), Move.outside("damaged"), item, fullest(from, item), e.damaged());
  }

  private String fullest(String place, String item) {
    return balances.shelf(place, item).fullest();
  }

  private void move(String from, String to, String item, String model, int quantity) {
    if (quantity > 0) {
      balances.book(new Move(from, to, item, model, quantity));
    }
  }
}
