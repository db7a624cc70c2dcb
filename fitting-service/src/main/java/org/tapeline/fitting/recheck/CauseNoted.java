package org.tapeline.fitting.recheck;

import java.util.Collection;
import java.util.UUID;
import org.tapeline.journal.Cause;

/** Who must act, in the same transaction, when re-checks may have become due. */
public interface CauseNoted {
  void noted(Collection<UUID> players, Cause cause);
}
