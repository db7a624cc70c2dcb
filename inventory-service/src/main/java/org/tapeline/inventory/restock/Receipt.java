package org.tapeline.inventory.restock;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * What came.
 *
 * @param quantity good pieces; empty for all that was asked for and is not damaged; a transfer of
 *     which nothing came did not arrive
 * @param damaged pieces that cannot be used
 * @param tags tags on the helmets that came; those without one get one
 * @param lot as printed on helmets from outside, and when they were made, where it is stated
 */
public record Receipt(
    Optional<Integer> quantity,
    Optional<Integer> damaged,
    Optional<List<String>> tags,
    Optional<String> lot,
    Optional<LocalDate> manufacturedOn,
    Optional<LocalDate> certifiedUntil) {
  private static final int MOST = 1000;

  /** Everything that was asked for, and all of it good. */
  static final Receipt ALL = of(Optional.empty(), Optional.empty());

  static Receipt of(int good, int damaged) {
    return of(Optional.of(good), Optional.of(damaged));
  }

  private static Receipt of(Optional<Integer> good, Optional<Integer> damaged) {
    return new Receipt(
        good, damaged, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Pieces that came, by what can be done with them. */
  record Came(int asked, int good, int damaged) {
    int missing() {
      return Math.max(0, asked - good - damaged);
    }

    int over() {
      return Math.max(0, good + damaged - asked);
    }

    boolean nothing() {
      return good + damaged == 0;
    }
  }

  /**
   * @throws Problem when that cannot have come
   */
  Came of(Restock asked) {
    int bad = damaged.orElse(0);
    Came came =
        new Came(asked.quantity(), quantity.orElse(Math.max(0, asked.quantity() - bad)), bad);
    if (came.good < 0 || bad < 0 || came.good > MOST || bad > MOST) {
      throw Problem.badRequest("quantity", "Give pieces from 0 to " + MOST + ".");
    }
    if (came.nothing() && !asked.betweenPlaces()) {
      throw Problem.badRequest(
          "nothing-came", "Nothing came. Cancel the request if nothing will come.");
    }
    if (asked.betweenPlaces() && came.over() > 0) {
      throw Problem.badRequest("quantity", "No more can come than was sent: " + asked.quantity());
    }
    return came;
  }
}
