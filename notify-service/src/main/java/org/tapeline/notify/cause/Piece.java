package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.notice.NoticeCovers.Covered;

/**
 * What is ready to be said of one player, before it is put together with what is ready of brothers
 * and sisters.
 *
 * @param covers what of it is told once, at least one
 * @param correlationId the chain it belongs to
 * @param why a code such as {@code fit-failed}, where there is one
 * @param said the slot that the words name, which may be one that does not hold
 * @param merges whether it may be told together with others
 * @param complete whether nothing more is awaited for it
 * @param holdUntil until when it may wait for others
 */
public record Piece(
    Step.Tell tell,
    UUID player,
    Optional<UUID> refitCase,
    List<UUID> covers,
    UUID correlationId,
    Optional<String> why,
    Optional<String> team,
    Optional<RefitCase.Booking> said,
    boolean merges,
    boolean complete,
    Instant holdUntil) {

  public Piece {
    covers = List.copyOf(covers);
  }

  /** Whether a notice that can still be taken back says just this. */
  boolean isSaidBy(Covered pending) {
    Optional<Instant> told = tell.slot().map(RefitCase.Booking::startsAt).or(tell::by);
    return pending.told().kind() == tell.kind()
        && pending.told().slotStartsAt().equals(told)
        && pending.told().slotField().equals(tell.slot().map(RefitCase.Booking::field))
        && covers.contains(pending.about());
  }
}
