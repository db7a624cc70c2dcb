package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Restock.Kind;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;

/**
 * Requests for the shelf, merged into what is open for that place and item; always in the caller's
 * transaction, which holds {@link RestockDesk#lock}.
 */
@ApplicationScoped
public class ShelfDesk {
  private final RestockDesk desk;
  private final RestockStore store;
  private final RestockJournal journal;
  private final RestockPolicy policy;
  private final Places places;
  private final Clock clock;

  ShelfDesk(
      RestockDesk desk,
      RestockStore store,
      RestockJournal journal,
      RestockPolicy policy,
      Places places,
      Clock clock) {
    this.desk = desk;
    this.store = store;
    this.journal = journal;
    this.policy = policy;
    this.places = places;
    this.clock = clock;
  }

  /**
   * Asks for more pieces.
   *
   * @param from one of our places that has some to spare; empty for outside
   * @param pieces 1 or more
   */
  Restock request(String place, String item, Optional<String> from, int pieces, Cause cause) {
    Cause step = cause.step("shelf-" + place + "-" + item);
    Optional<Restock> open =
        from.isPresent()
            ? store.mergeableTransfer(place, from.get(), item)
            : store.mergeable(place, item);
    Instant expected =
        from.isPresent()
            ? policy.travelled(clock.instant(), places.zone(place))
            : desk.expected(place, item);
    return open.map(o -> desk.resaid(o, o.forStock() + pieces, later(o, expected), step))
        .orElseGet(() -> made(place, item, from, pieces, expected, step));
  }

  private Instant later(Restock open, Instant expected) {
    return open.expectedAt().isBefore(clock.instant()) ? expected : open.expectedAt();
  }

  private Restock made(
      String place, String item, Optional<String> from, int pieces, Instant expected, Cause cause) {
    String[] words = item.split(":");
    boolean helmet = words.length == 3;
    Restock made =
        new Restock(
            DerivedId.from(cause.id(), "shelf/" + place + "/" + item + "/" + from.orElse("")),
            from.isPresent() ? Kind.TRANSFER : Kind.RESTOCK,
            place,
            from,
            item,
            helmet ? Optional.of(words[1]) : Optional.empty(),
            helmet ? Optional.of(words[2]) : Optional.empty(),
            Optional.empty(),
            pieces,
            pieces,
            State.REQUESTED,
            expected);
    store.save(made, clock.instant());
    journal.requested(made, cause);
    return made;
  }
}
