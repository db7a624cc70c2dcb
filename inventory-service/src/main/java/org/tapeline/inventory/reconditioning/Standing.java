package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.util.List;

/**
 * Until when a helmet can be worn, and why it is due.
 *
 * @param wearableThrough the last day, by label, interval and age
 * @param lastAgeThrough the last day before it is too old, whatever is done to it
 * @param reasons empty when it is not due
 */
public record Standing(
    FleetHelmet helmet, LocalDate wearableThrough, LocalDate lastAgeThrough, List<Reason> reasons) {

  /** Why a helmet is due. */
  public enum Why {
    CERTIFICATION,
    INTERVAL,
    LAST_AGE,
    FINDINGS
  }

  /**
   * A reason with its day.
   *
   * @param on the last good day; today for findings
   */
  public record Reason(Why why, LocalDate on) {}

  public boolean isDue() {
    return !reasons.isEmpty();
  }

  /** Counted on through that day: in use, and neither lapsed nor too old by then. */
  public boolean usableThrough(LocalDate day) {
    return helmet.inUse() && !wearableThrough.isBefore(day);
  }
}
