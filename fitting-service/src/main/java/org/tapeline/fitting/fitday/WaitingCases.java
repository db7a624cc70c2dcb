package org.tapeline.fitting.fitday;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;

/** Whoever has cases to book: told when slots come or go. */
public interface WaitingCases {
  /** There are new slots. */
  void bookWaiting(Cause cause);

  /** Nothing else may happen to these cases until the transaction ends. */
  void holdStill(Collection<UUID> refitCases);

  /**
   * A fit day is not what it was, and these have lost their slots: each gets one again or is told
   * that there is none.
   *
   * @param why {@code moved} or {@code cancelled}
   */
  void bookAgain(UUID fitDay, List<TakenPlace> displaced, String why, Cause cause);
}
