package org.tapeline.notify.staff;

import java.time.Instant;
import java.util.UUID;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.restock.RestockOpen;

/**
 * What a depot has not heard yet of a request.
 *
 * @param kind a request that is new to it, or another amount
 * @param open as it stands now
 */
record DepotNews(NoticeKind kind, RestockOpen open) {

  CauseName cause() {
    return kind == NoticeKind.RESTOCK_REQUEST ? CauseName.RESTOCK_ASKED : CauseName.RESTOCK_CHANGED;
  }

  UUID request() {
    return open.request;
  }

  Instant expectedAt() {
    return open.expectedAt;
  }
}
