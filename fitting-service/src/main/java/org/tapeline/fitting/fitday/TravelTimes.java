package org.tapeline.fitting.fitday;

import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Minutes from field to field, one way; what is not listed cannot be reached. */
public record TravelTimes(Map<String, Map<String, Integer>> minutes) {

  public OptionalInt between(String from, String to) {
    if (from.equals(to)) {
      return OptionalInt.of(0);
    }
    Integer listed = minutes.getOrDefault(from, Map.of()).get(to);
    return listed == null ? OptionalInt.empty() : OptionalInt.of(listed);
  }

  /** Every place that is listed from one of these, and they themselves. */
  Set<String> around(Set<String> fields) {
    Set<String> places = new TreeSet<>(fields);
    fields.forEach(field -> places.addAll(minutes.getOrDefault(field, Map.of()).keySet()));
    return places;
  }
}
