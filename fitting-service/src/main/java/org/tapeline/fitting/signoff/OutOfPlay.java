package org.tapeline.fitting.signoff;

import java.util.Collection;
import java.util.Set;
import java.util.UUID;

/** Who is out of play after a suspected concussion, whatever sign-off there is. */
public interface OutOfPlay {
  Set<UUID> among(Collection<UUID> players);
}
