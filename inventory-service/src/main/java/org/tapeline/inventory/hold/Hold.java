package org.tapeline.inventory.hold;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A hold as lists and its page show it.
 *
 * @param tags how many are on its tag list
 * @param matching helmets it concerned when it was placed
 * @param due helmets in whose record it does not stand yet; nobody is given them all the same
 * @param held helmets under it now
 * @param freeing helmets for which it is lifted, and in whose record that does not stand yet
 * @param putAside of those under it, how many were laid aside
 */
public record Hold(
    UUID hold,
    String reason,
    String reference,
    Optional<String> model,
    List<String> lots,
    Optional<LocalDate> madeFrom,
    Optional<LocalDate> madeTo,
    int tags,
    List<String> liftedLots,
    boolean open,
    int matching,
    int worn,
    String placedBy,
    Instant placedAt,
    Optional<Instant> liftedAt,
    int due,
    int held,
    int freeing,
    int freed,
    int putAside) {

  /** Whether all of it, and of what was lifted, stands in the helmets' records. */
  public boolean settled() {
    return due + freeing == 0;
  }

  /** Helmets that are done, of those with which something was to be done. */
  public int done() {
    return due > 0 ? held + freed : freed;
  }

  /** Out of how many. */
  public int toDo() {
    return done() + due + freeing;
  }

  /** Under the hold and not laid aside yet. */
  public int stillOut() {
    return due + held - putAside;
  }

  /** The days of manufacture in words; empty when they do not matter. */
  public String made() {
    String from = madeFrom.map(day -> "from " + day).orElse("");
    String to = madeTo.map(day -> "to " + day).orElse("");
    return (from + " " + to).strip();
  }
}
