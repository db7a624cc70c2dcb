package org.tapeline.fitting.concussion;

import org.tapeline.fitting.concussion.ConcussionEvent.ConcussionSuspected;
import org.tapeline.journal.Cause;

/** Who must act, in the same transaction, when a concussion is suspected. */
public interface SuspicionOutcome {
  void suspected(ConcussionSuspected event, Cause cause);
}
