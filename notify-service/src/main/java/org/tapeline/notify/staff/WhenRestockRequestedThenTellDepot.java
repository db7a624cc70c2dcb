package org.tapeline.notify.staff;

import java.util.Optional;
import java.util.OptionalInt;
import org.tapeline.notify.notice.NoticeKind;

/**
 * Which notice a depot gets of a restock request: one for the request, and one for each change of
 * its amount. A request that is said again with the same amount (another case waits for the same
 * pieces) makes no more work and gives no notice.
 */
public final class WhenRestockRequestedThenTellDepot {
  private WhenRestockRequestedThenTellDepot() {}

  /**
   * @param told the amount that the depot was told last; empty when nothing was told
   * @param quantity the amount now
   */
  public static Optional<NoticeKind> react(OptionalInt told, int quantity) {
    if (told.isEmpty()) {
      return Optional.of(NoticeKind.RESTOCK_REQUEST);
    }
    return told.getAsInt() == quantity ? Optional.empty() : Optional.of(NoticeKind.RESTOCK_CHANGED);
  }
}
