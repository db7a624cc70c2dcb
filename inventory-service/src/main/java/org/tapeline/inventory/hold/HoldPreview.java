package org.tapeline.inventory.hold;

import java.util.List;

/**
 * What a hold would concern.
 *
 * @param helmets all of them
 * @param players who would have to give one back
 * @param reserved of them, kept for a re-fit that has to be served anew
 * @param lotNotKnown of them, which are concerned because nobody knows their lot
 * @param unknownTags on the tag list and not known here; they are held should they come
 * @param byState how many in each state
 * @param byPlace how many at each place
 * @param byKind how many of each model and size, with what is free instead
 */
public record HoldPreview(
    int helmets,
    int players,
    int reserved,
    int lotNotKnown,
    int unknownTags,
    List<Count> byState,
    List<Count> byPlace,
    List<OfKind> byKind) {
  static final int MANY = 1_000;

  /** How many of what. */
  public record Count(String what, int helmets) {}

  /**
   * Helmets of a model and size.
   *
   * @param worn how many of them players have
   * @param free how many of the kind are free now and not concerned
   */
  public record OfKind(String model, String size, int helmets, int worn, int free) {
    public int missing() {
      return Math.max(0, worn - free);
    }
  }

  /** More than one places every day. */
  public boolean many() {
    return helmets > MANY;
  }

  /** Players for whom there is no free one of the same model and size. */
  public int without() {
    return byKind.stream().mapToInt(OfKind::missing).sum();
  }
}
