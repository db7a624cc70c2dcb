package org.tapeline.fitting.concussion;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What takes a player out of play, and what ends it. Nothing medical stands here. */
public sealed interface ConcussionEvent {
  UUID player();

  /**
   * A concussion is suspected: out of play.
   *
   * @param tag the helmet that was worn, as far as it is known: it goes to inspection
   */
  record ConcussionSuspected(UUID player, Optional<String> tag, Instant at, String by)
      implements ConcussionEvent {}

  /** A person confirmed that a licensed health-care professional cleared the return. */
  record ReturnCleared(UUID player, String by, Instant at) implements ConcussionEvent {}
}
