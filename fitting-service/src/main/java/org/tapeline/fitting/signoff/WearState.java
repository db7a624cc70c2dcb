package org.tapeline.fitting.signoff;

/**
 * Whether a player may take the field.
 *
 * @param status of the sign-off: never-fitted, signed-off, check-due, lapsed, withdrawn or
 *     out-of-play; {@code unknown} when it cannot be told
 * @param code may-wear, check-today, do-not-wear or unknown: also the class on the page
 * @param said the state in words
 * @param reason why, in words; empty for "may wear"
 */
public record WearState(String status, String code, String said, String reason) {

  static WearState mayWear() {
    return new WearState("signed-off", "may-wear", "May wear", "");
  }

  static WearState checkToday(String reason) {
    return new WearState("check-due", "check-today", "Check today", reason);
  }

  static WearState doNotWear(String status, String reason) {
    return new WearState(status, "do-not-wear", "Do not wear", reason);
  }

  static WearState unknown(String reason) {
    return new WearState("unknown", "unknown", "Not known", reason);
  }
}
