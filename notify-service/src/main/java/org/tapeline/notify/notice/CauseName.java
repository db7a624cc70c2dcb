package org.tapeline.notify.notice;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What can lead to a notice; the reactions find it, the table of causes says what follows. */
public enum CauseName {
  REFIT_DO_NOT_WEAR(Recipient.GUARDIANS, NoticeKind.DO_NOT_WEAR_REFIT),
  REFIT_SOON(Recipient.GUARDIANS, NoticeKind.REFIT_SOON),
  REFIT_FIRST_DATE(Recipient.GUARDIANS, NoticeKind.REFIT_DATE),
  REFIT_OTHER_DATE(Recipient.GUARDIANS, NoticeKind.REFIT_CHANGED),
  REFIT_DATE_OFF(Recipient.GUARDIANS, NoticeKind.REFIT_UNBOOKED),
  REFIT_PASSED(Recipient.GUARDIANS, NoticeKind.FITTED_AGAIN),
  RECHECK_DUE(Recipient.GUARDIANS, NoticeKind.RECHECK_DUE),
  SIGN_OFF_LAPSED(Recipient.GUARDIANS, NoticeKind.SIGN_OFF_LAPSED),
  SIGNED_OFF_AGAIN(Recipient.GUARDIANS, NoticeKind.FITTED_AGAIN),
  REFIT_FOR_FITTERS(Recipient.FITTERS, NoticeKind.REFIT_CASE),
  RESTOCK_ASKED(Recipient.DEPOT, NoticeKind.RESTOCK_REQUEST),
  RESTOCK_CHANGED(Recipient.DEPOT, NoticeKind.RESTOCK_CHANGED);

  private static final Set<CauseName> SAFETY = EnumSet.of(REFIT_DO_NOT_WEAR, SIGN_OFF_LAPSED);

  private static final Set<CauseName> OF_A_CASE =
      EnumSet.of(REFIT_FIRST_DATE, REFIT_OTHER_DATE, REFIT_DATE_OFF, REFIT_FOR_FITTERS);

  private static final Set<CauseName> FOR_HOUSEHOLDS =
      EnumSet.of(REFIT_DO_NOT_WEAR, REFIT_SOON, RECHECK_DUE, SIGN_OFF_LAPSED);

  /** Who can be told. */
  public enum Recipient {
    GUARDIANS,
    /** The fitters of the field. */
    FITTERS,
    DEPOT,
    EQUIPMENT_MANAGER;

    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  private final Recipient words;
  private final NoticeKind kind;

  CauseName(Recipient words, NoticeKind kind) {
    this.words = words;
    this.kind = kind;
  }

  /** For whom there are words. */
  Recipient words() {
    return words;
  }

  /** The kind whose words fit. */
  NoticeKind kind() {
    return kind;
  }

  /** Whether it says that a helmet must not be worn: the guardians are told, and at once. */
  public boolean isSafety() {
    return SAFETY.contains(this);
  }

  /** Whether it has the urgency of its re-fit case. */
  boolean isOfACase() {
    return OF_A_CASE.contains(this);
  }

  /** Whether there are words for several children. */
  boolean isForHouseholds() {
    return FOR_HOUSEHOLDS.contains(this);
  }

  /** The word in {@code causes.json} and on the page: {@code refit-do-not-wear}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
