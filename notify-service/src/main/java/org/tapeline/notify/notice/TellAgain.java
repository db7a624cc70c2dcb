package org.tapeline.notify.notice;

import java.util.Collection;
import java.util.UUID;

/** Whoever tells again what a notice covered that was cancelled and still holds. */
public interface TellAgain {

  /** Soon, in a transaction of its own; noted in the caller's. */
  void soon(Collection<UUID> refitCases, Collection<UUID> players);
}
