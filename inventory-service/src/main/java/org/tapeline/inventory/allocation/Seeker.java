package org.tapeline.inventory.allocation;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;

/**
 * A player who needs a helmet.
 *
 * @param field where the player is fitted
 * @param mustNotWear there is no helmet that the player may wear now
 * @param waitingSince when that was known
 * @param accepts what may be tried, each kind once, the best first
 */
public record Seeker(
    UUID player,
    String field,
    boolean mustNotWear,
    Instant waitingSince,
    List<Acceptable> accepts) {

  /** A kind of helmet, with how good it is for this player. */
  public record Acceptable(Kind kind, Liking liking) {}

  /** How good a kind is for a player. */
  public enum Liking {
    /** The advised size. */
    ADVISED,
    /** The second helmet to bring when the reading is near an edge. */
    SECOND_SIZE,
    /** The advised size of a model that was not asked for. */
    OTHER_MODEL,
    /** The second size of a model that was not asked for. */
    OTHER_MODEL_SECOND_SIZE
  }

  public Seeker {
    accepts = List.copyOf(accepts);
    Set<Kind> kinds = new TreeSet<>();
    accepts.forEach(a -> kinds.add(a.kind()));
    if (kinds.size() < accepts.size()) {
      throw new IllegalArgumentException("A kind is named twice for " + player);
    }
  }
}
