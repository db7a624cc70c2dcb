package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetWatch;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.stock.ShelfWatch;
import org.tapeline.journal.Cause;

/**
 * Whatever lowers a shelf to its reorder point raises a request. Looked at once for each shelf, at
 * the end of the transaction: what was taken from it may have been put back or requested meanwhile,
 * and a hold takes many helmets at once.
 */
@ApplicationScoped
public class WhenStockIsLowThenRequest implements ShelfWatch, HelmetWatch {
  private final RestockItems items;
  private final Planner planner;
  private final RestockDesk desk;
  private final ShelfDesk shelves;
  private final Places places;
  private final Database database;
  private final TransactionSynchronizationRegistry transactions;

  WhenStockIsLowThenRequest(
      RestockItems items,
      Planner planner,
      RestockDesk desk,
      ShelfDesk shelves,
      Places places,
      Database database,
      TransactionSynchronizationRegistry transactions) {
    this.items = items;
    this.planner = planner;
    this.desk = desk;
    this.shelves = shelves;
    this.places = places;
    this.database = database;
    this.transactions = transactions;
  }

  /** A shelf; in the order in which they are locked. */
  private record Key(String place, String item) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      return (place + " " + item).compareTo(other.place + " " + other.item);
    }
  }

  /** The shelves that one transaction has lowered, each with what did it first. */
  private static final class Lowered {
    private final TreeMap<Key, Cause> shelves = new TreeMap<>();
  }

  @Override
  public void lowered(String place, String item, Cause cause) {
    if (items.of(item).isEmpty()) {
      return;
    }
    Lowered lowered = (Lowered) transactions.getResource(Lowered.class);
    if (lowered == null) {
      Lowered fresh = new Lowered();
      transactions.putResource(Lowered.class, fresh);
      database.beforeCommit(() -> look(fresh));
      lowered = fresh;
    }
    lowered.shelves.putIfAbsent(new Key(place, item), cause);
  }

  @Override
  public void taken(String tag, String why, Cause cause) {
    takenAll(List.of(tag), why, cause);
  }

  @Override
  public void takenAll(List<String> tags, String why, Cause cause) {
    database
        .list(
            "select distinct place, 'helmet:' || model || ':' || size from helmet"
                + " where tag = any (string_to_array(?, ','))",
            row -> new Key(row.getString(1), row.getString(2)),
            String.join(",", tags))
        .forEach(shelf -> lowered(shelf.place(), shelf.item(), cause));
  }

  @Override
  public void free(String tag, String model, String size, Cause cause) {
    // More is there than before: nothing to request.
  }

  /** A transfer lowers the shelf that it comes from, which is looked at in turn. */
  private void look(Lowered lowered) {
    while (!lowered.shelves.isEmpty()) {
      Map.Entry<Key, Cause> next = lowered.shelves.pollFirstEntry();
      look(next.getKey().place(), next.getKey().item(), next.getValue());
    }
  }

  private void look(String place, String item, Cause cause) {
    desk.lock(place, item);
    places
        .find(place)
        .flatMap(at -> planner.plan(at, item))
        .map(planner::suggest)
        .filter(suggested -> suggested.quantity() > 0)
        .ifPresent(suggested -> request(suggested, cause));
  }

  private void request(Suggestion suggested, Cause cause) {
    Optional<String> from = suggested.from();
    shelves.request(suggested.place(), suggested.item(), from, suggested.quantity(), cause);
    from.ifPresent(giver -> lowered(giver, suggested.item(), cause));
  }
}
