package org.tapeline.inventory.reconditioning;

import java.util.Map;
import java.util.OptionalInt;
import org.tapeline.inventory.reconditioning.FleetHelmet.Kind;

/**
 * How many usable helmets the season needs, spare ones included.
 *
 * @param inAll by model and size, over all places; what is not named is not known
 * @param atPlace by model, size and place; what is not named is none
 */
public record Needs(Map<Kind, Integer> inAll, Map<At, Integer> atPlace) {

  /** A model and size at a place. */
  public record At(Kind kind, String place) {}

  public Needs {
    inAll = Map.copyOf(inAll);
    atPlace = Map.copyOf(atPlace);
  }

  /** Empty when no forecast says it. */
  public OptionalInt inAll(Kind kind) {
    Integer need = inAll.get(kind);
    return need == null ? OptionalInt.empty() : OptionalInt.of(need);
  }

  public int at(Kind kind, String place) {
    return atPlace.getOrDefault(new At(kind, place), 0);
  }
}
