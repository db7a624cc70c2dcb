package org.tapeline.notify.notice;

import java.util.Locale;

/** What a notice tells. */
public enum NoticeKind {
  /** The helmet must not be worn; with the re-fit's date when it is known. */
  DO_NOT_WEAR_REFIT,
  /** A re-fit is due, the helmet may be worn until then. */
  REFIT_SOON,
  /** The date, after a first notice that had none. */
  REFIT_DATE,
  /** Another date or field than the last one told. */
  REFIT_CHANGED,
  /** The date that was told does not hold, and there is no other yet. */
  REFIT_UNBOOKED,
  /** The case is closed by a passed fit check. */
  FITTED_AGAIN,
  /** The fit is to be looked at again. */
  RECHECK_DUE,
  /** The sign-off ended since a re-check was missed, or the certification ended: not to be worn. */
  SIGN_OFF_LAPSED,
  /** A depot is asked for helmets or parts. */
  RESTOCK_REQUEST,
  /** The amount of an open restock request changed. */
  RESTOCK_CHANGED,
  /** Several restock requests that are new, or whose amount changed. */
  RESTOCK_SEVERAL,
  /** A field's fitters learn of a new case. */
  REFIT_CASE,
  /** A family asked for a call. */
  HELP_ASKED,
  /** Staff are to reach people whom no channel reached. */
  NOT_REACHED,
  /** A depot's day: its restock requests. */
  DEPOT_DAY,
  /** A field's day: who is booked, and who must not wear a helmet. */
  FIELD_DAY,
  /** The equipment manager's day: what did not reach anybody, and what is open too long. */
  MANAGER_DAY;

  /** The word used in events, in the database and in addresses: {@code do-not-wear-refit}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Whether a person can turn such news off. A kind that does not stand here is about safety or
   * about work, and cannot.
   */
  public boolean mayBeTurnedOff() {
    return this == FITTED_AGAIN;
  }

  /**
   * @throws IllegalArgumentException when there is no such kind
   */
  public static NoticeKind of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
