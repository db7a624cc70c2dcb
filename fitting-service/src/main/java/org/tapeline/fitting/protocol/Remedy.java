package org.tapeline.fitting.protocol;

import java.util.List;
import java.util.Optional;

/**
 * Something to try.
 *
 * @param voids checks that must be done again afterwards, in the protocol's order: all that depend
 *     on what the remedy changes. The check that it is tried for is void in any case.
 * @param items the parts it can use, the usual one first; for a step all of the row, thin to thick;
 *     empty when it takes none from stock
 * @param step the place where it puts the next part of a row; empty for no such remedy
 * @param turn what it turns up or down; empty for what has no two directions
 * @param only what a helmet must have for it to be possible, such as {@code air-liner}
 * @param care what to mind while doing it
 */
public record Remedy(
    String id,
    String text,
    List<String> voids,
    List<String> items,
    Optional<Step> step,
    Optional<Turn> turn,
    Optional<String> only,
    List<Care> care) {

  /**
   * The next part of a row, thicker or thinner, larger or smaller.
   *
   * @param slot where the part sits, such as {@code jaw-left}
   * @param by 1 for the next one up the row, -1 for the next one down
   */
  public record Step(String slot, int by) {
    public Step {
      if (by != 1 && by != -1) {
        throw new IllegalArgumentException("A step goes one up or one down");
      }
    }
  }

  /**
   * More or less of something that can be overdone.
   *
   * @param quantity such as {@code liner-air}
   * @param by 1 for more, -1 for less
   * @param most how often in one direction on one helmet, 1 to 5
   */
  public record Turn(String quantity, int by, int most) {
    public Turn {
      if (by != 1 && by != -1) {
        throw new IllegalArgumentException("A turn is up or down");
      }
      if (most < 1 || most > 5) {
        throw new IllegalArgumentException("A turn is made 1 to 5 times on a helmet");
      }
    }
  }

  /**
   * What to mind.
   *
   * @param id also the name of its drawing
   */
  public record Care(String id, String text) {}

  public Remedy {
    voids = List.copyOf(voids);
    items = List.copyOf(items);
    care = List.copyOf(care);
    if (step.isPresent() && items.size() < 2) {
      throw new IllegalArgumentException(id + " steps along a row of at least two parts");
    }
  }

  /** One that can be done once for a check and takes a part, or none. */
  public static Remedy once(String id, String text, List<String> voids, List<String> items) {
    return new Remedy(
        id, text, voids, items, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
  }
}
