package org.tapeline.inventory.allocation;

import java.util.Map;
import java.util.OptionalInt;

/**
 * How long it takes from place to place.
 *
 * @param minutes from the one to the other; what is not there is not known
 */
public record Ways(Map<String, Map<String, Integer>> minutes) {

  public OptionalInt between(String from, String to) {
    if (from.equals(to)) {
      return OptionalInt.of(0);
    }
    Integer known = minutes.getOrDefault(from, Map.of()).get(to);
    return known == null ? OptionalInt.empty() : OptionalInt.of(known);
  }
}
