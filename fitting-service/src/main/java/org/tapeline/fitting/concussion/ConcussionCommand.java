package org.tapeline.fitting.concussion;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What people say of a suspected concussion. */
public sealed interface ConcussionCommand {

  /** It is suspected. */
  record Suspect(UUID player, Optional<String> tag, String by, Instant at)
      implements ConcussionCommand {}

  /**
   * The return was cleared.
   *
   * @param confirmed the person says that a licensed health-care professional did
   */
  record Clear(UUID player, boolean confirmed, String by, Instant at)
      implements ConcussionCommand {}
}
