package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseTable;

/** How long causes wait to be told together: the table's windows, shortened by the settings. */
@ApplicationScoped
class Windows {
  private final CauseTable table;
  private final Duration forDate;
  private final Duration atMost;

  Windows(
      CauseTable table,
      @ConfigProperty(name = "tapeline.refit.wait-for-date") Duration forDate,
      @ConfigProperty(name = "tapeline.causes.window-at-most") Duration atMost) {
    this.table = table;
    this.forDate = forDate;
    this.atMost = atMost;
  }

  Duration of(CauseName cause) {
    return table.window(cause, cause.isSafety() ? forDate : atMost);
  }
}
