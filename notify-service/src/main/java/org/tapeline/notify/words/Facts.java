package org.tapeline.notify.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * What differs from notice to notice, already written in the reader's language. Line breaks in a
 * fact (a name from an import) become spaces.
 */
public record Facts(Map<String, String> byName) {

  /** The facts that words may ask for. */
  public static final Set<String> NAMES =
      Set.of(
          "player",
          "team",
          "why",
          "until",
          "date",
          "dates",
          "time",
          "ends",
          "place",
          "item",
          "quantity",
          "to",
          "from",
          "source",
          "expected",
          "model",
          "size",
          "days",
          "link");

  public Facts {
    byName = Map.copyOf(byName);
    if (!NAMES.containsAll(byName.keySet())) {
      throw new IllegalArgumentException("Facts that no words ask for: " + byName.keySet());
    }
  }

  public static Facts none() {
    return new Facts(Map.of());
  }

  public Facts with(String name, String value) {
    Map<String, String> more = new HashMap<>(byName);
    more.put(name, value.replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]+", " ").strip());
    return new Facts(more);
  }

  /**
   * @throws IllegalArgumentException when it is missing
   */
  public String get(String name) {
    String value = byName.get(name);
    if (value == null) {
      throw new IllegalArgumentException("The words ask for a fact that is missing: " + name);
    }
    return value;
  }
}
