package org.tapeline.notify.channel;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What recipients asked for, in the caller's transaction. */
public interface Wishes {

  /** Channels in the person's own order; empty for who asked for none. */
  List<String> of(String recipient);

  /** When the person's quiet hours end; empty when it is not quiet for the person now. */
  Optional<Instant> quietUntil(String recipient, Instant now);
}
