package org.tapeline.fitting.protocol;

import java.util.Map;
import java.util.Set;

/**
 * What a helmet model comes with.
 *
 * @param has what it has, such as {@code air-liner}
 * @param fitted the part in each slot as delivered
 */
public record Fittings(Set<String> has, Map<String, String> fitted) {
  public Fittings {
    has = Set.copyOf(has);
    fitted = Map.copyOf(fitted);
  }
}
