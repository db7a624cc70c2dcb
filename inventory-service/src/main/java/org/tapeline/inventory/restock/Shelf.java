package org.tapeline.inventory.restock;

/**
 * An item at a place, as the books have it.
 *
 * @param item a part's code, or {@code helmet:<model>:<size>}
 * @param onHand pieces in the books; below 0 when more was used than was booked
 * @param kept of these for re-fit cases and for other places
 * @param coming requested for this place and not here yet
 * @param waiting re-fit cases here that wait for one
 */
public record Shelf(String place, String item, int onHand, int kept, int coming, int waiting) {

  /** What can still be given out once everything has come and every case has been served. */
  public int position() {
    return onHand - kept + coming - waiting;
  }

  /** Together with another place's. */
  Shelf with(Shelf other) {
    return new Shelf(
        place,
        item,
        onHand + other.onHand,
        kept + other.kept,
        coming + other.coming,
        waiting + other.waiting);
  }

  /** What is here and nobody's. */
  int free() {
    return Math.max(0, onHand - kept);
  }
}
