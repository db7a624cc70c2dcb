package org.tapeline.sizing.roster;

import java.util.Optional;
import java.util.stream.Stream;

/** Why a recorded head was not right. */
public enum CorrectionReason {
  MISREAD("misread", "misread"),
  WRONG_PLAYER("wrong-player", "another player's head"),
  WRONG_UNIT("wrong-unit", "wrong unit"),
  OTHER("other", "another reason");

  private final String code;
  private final String said;

  CorrectionReason(String code, String said) {
    this.code = code;
    this.said = said;
  }

  public String code() {
    return code;
  }

  public String said() {
    return said;
  }

  /** Empty for a word that is none of them, also for {@code null}. */
  public static Optional<CorrectionReason> of(String code) {
    return Stream.of(values()).filter(reason -> reason.code.equals(code)).findFirst();
  }
}
