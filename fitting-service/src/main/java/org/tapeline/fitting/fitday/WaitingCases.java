package org.tapeline.fitting.fitday;

import org.tapeline.journal.Cause;

/** Whoever has cases without a slot: told when slots come or go. */
public interface WaitingCases {
  void bookWaiting(Cause cause);
}
