package org.tapeline.inventory.stock;

import java.util.Map;
import java.util.TreeMap;

/** What is on each account, of each part, by helmet model, after moves in their order. */
public final class Balances {
  private final Map<Key, Integer> pieces = new TreeMap<>();

  /** One line of the books. */
  public record Key(String account, String item, String model) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int byAccount = account.compareTo(other.account);
      int byItem = item.compareTo(other.item);
      return byAccount != 0 ? byAccount : byItem != 0 ? byItem : model.compareTo(other.model);
    }
  }

  public void book(Move move) {
    for (Move.Entry e : move.entries()) {
      pieces.merge(new Key(e.account(), e.item(), e.model()), e.amount(), Integer::sum);
    }
  }

  /** Pieces on an account, for all models together. */
  public int on(String account, String item) {
    return pieces.entrySet().stream()
        .filter(e -> e.getKey().account().equals(account) && e.getKey().item().equals(item))
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  /** What of a part lies at a place. */
  public Shelf shelf(String place, String item) {
    Map<String, Integer> byModel = new TreeMap<>();
    pieces.forEach(
        (key, n) -> {
          if (key.account().equals(Move.place(place)) && key.item().equals(item)) {
            byModel.put(key.model(), n);
          }
        });
    return new Shelf(byModel);
  }

  /** All lines that are not 0. */
  public Map<Key, Integer> lines() {
    Map<Key, Integer> lines = new TreeMap<>(pieces);
    lines.values().removeIf(n -> n == 0);
    return lines;
  }
}
