package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.journal.Cause;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.notice.NoticeCovers;
import org.tapeline.notify.notice.NoticeCovers.Covered;
import org.tapeline.notify.notice.Notices;

/**
 * Tells guardians what is ready, several children together; always in the caller's transaction.
 *
 * <p>Locks are taken in one order: first what the events are about, then the guardians by id, then
 * notices.
 */
@ApplicationScoped
class Telling {
  private final NoticeCovers covers;
  private final Notices notices;
  private final GuardianNoticeWriter writer;
  private final Clock clock;

  Telling(NoticeCovers covers, Notices notices, GuardianNoticeWriter writer, Clock clock) {
    this.covers = covers;
    this.notices = notices;
    this.writer = writer;
    this.clock = clock;
  }

  /** What is ready of one thing for one guardian. */
  record Ready(List<Piece> pieces, boolean tookBack) {
    static final Ready NOTHING = new Ready(List.of(), false);
  }

  /** Looks at one thing for one guardian. */
  interface Look<T> {
    Ready of(T thing, Guardian guardian);
  }

  /**
   * Tells all guardians of some things what is ready of these and of what brothers and sisters
   * have.
   *
   * @param player whom a thing is about
   * @param siblings other things that a guardian's children have, without those at hand
   * @return the things of which something waits, if only for a guardian to be known
   */
  <T> Set<T> tell(
      List<T> things,
      Function<T, UUID> player,
      Function<Guardian, List<T>> siblings,
      Look<T> look) {
    Set<T> waiting = new HashSet<>();
    SortedMap<UUID, Guardian> guardians = new TreeMap<>();
    for (T thing : things) {
      List<Guardian> own = Guardian.of(player.apply(thing));
      own.forEach(guardian -> guardians.put(guardian.guardian, guardian));
      if (own.isEmpty()) {
        waiting.add(thing);
      }
    }
    guardians.keySet().forEach(covers::lock);
    for (Guardian guardian : guardians.values()) {
      List<T> own =
          things.stream().filter(t -> guardian.players.contains(player.apply(t))).toList();
      Set<Piece> held = new HashSet<>();
      List<Piece> ready = ready(own, siblings, look, guardian);
      held.addAll(ready);
      for (List<Piece> together : Household.now(ready, guardian.players.size(), clock.instant())) {
        writer.tell(together, guardian);
        together.forEach(held::remove);
      }
      own.stream()
          .filter(t -> held.stream().anyMatch(p -> p.player().equals(player.apply(t))))
          .forEach(waiting::add);
    }
    return waiting;
  }

  private static <T> List<Piece> ready(
      List<T> own, Function<Guardian, List<T>> siblings, Look<T> look, Guardian guardian) {
    List<Piece> ready = new ArrayList<>();
    boolean tookBack = false;
    for (T thing : own) {
      Ready of = look.of(thing, guardian);
      ready.addAll(of.pieces());
      tookBack |= of.tookBack();
    }
    if (guardian.players.size() > 1 && (tookBack || ready.stream().anyMatch(Piece::merges))) {
      siblings.apply(guardian).stream()
          .filter(thing -> !own.contains(thing))
          .forEach(
              thing -> {
                ready.addAll(look.of(thing, guardian).pieces());
                // Not locked: whoever changes it later in this transaction has to read it anew.
                Guardian.getEntityManager().detach(thing);
              });
    }
    return ready;
  }

  /**
   * Takes back what was not tried yet and is not to be said any more, and leaves out what was said.
   *
   * @param covered all that the guardian was told of the thing
   * @param why the code of a cancellation
   */
  Ready unsaid(
      List<Piece> pieces, List<Covered> covered, Guardian guardian, String why, Cause cause) {
    List<Covered> pending = covered.stream().filter(Covered::pending).toList();
    List<UUID> stale =
        pending.stream()
            .filter(p -> pieces.stream().noneMatch(piece -> piece.isSaidBy(p)))
            .map(Covered::notice)
            .distinct()
            .toList();
    stale.forEach(notice -> covers.takeBack(notice, why, clock.instant(), cause));
    List<Piece> left =
        pieces.stream()
            .filter(piece -> pending.stream().noneMatch(piece::isSaidBy))
            .filter(piece -> fresh(piece, guardian))
            .toList();
    return new Ready(left, !stale.isEmpty());
  }

  private boolean fresh(Piece piece, Guardian guardian) {
    String recipient = guardian.guardian.toString();
    return piece.covers().stream()
        .noneMatch(about -> notices.raisedBefore(piece.tell().kind(), about, recipient));
  }
}
