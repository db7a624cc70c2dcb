package org.tapeline.inventory.stock;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What of one part lies at one place, by the helmet model that it is kept for (empty for any), as
 * the books have it; and which of it is taken.
 *
 * @param pieces may be less than 0
 */
public record Shelf(Map<String, Integer> pieces) {
  public static final String ANY = "";

  public Shelf {
    pieces = new TreeMap<>(pieces);
  }

  private int of(String model) {
    return pieces.getOrDefault(model, 0);
  }

  /**
   * Which is taken for a helmet of that model: what is kept for it, then what is kept for any, then
   * what the others say may come from another model's. Where the books have nothing of all these it
   * is its own all the same: the piece was there, and the books must be corrected there.
   */
  public String forHelmet(String model, Predicate<String> mayComeFrom) {
    if (of(model) > 0) {
      return model;
    }
    if (of(ANY) > 0) {
      return ANY;
    }
    return pieces.entrySet().stream()
        .filter(e -> e.getValue() > 0 && mayComeFrom.test(e.getKey()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(model);
  }

  /** Of which there is most: what leaves without a helmet that it is for. */
  public String fullest() {
    String fullest = ANY;
    int most = pieces.getOrDefault(ANY, Integer.MIN_VALUE);
    for (Map.Entry<String, Integer> e : pieces.entrySet()) {
      if (e.getValue() > most) {
        fullest = e.getKey();
        most = e.getValue();
      }
    }
    return fullest;
  }
}
