package org.tapeline.proof.faults.strike;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What can be done to a stack. */
public enum Kind {
  KILL_SERVICE("kill-service"),
  KILL_RELAY("kill-relay"),
  KILL_BROKER("kill-broker"),
  KILL_DATABASE("kill-database"),
  PAUSE("pause"),
  FULL_DISK("full-disk"),
  TWO_COPIES("two-copies"),
  DELIVER_AGAIN("deliver-again");

  private final String code;

  Kind(String code) {
    this.code = code;
  }

  /** What it is called on the command line. */
  public String code() {
    return code;
  }

  /** Empty when there is none of that name. */
  public static Optional<Kind> of(String code) {
    return Arrays.stream(values()).filter(kind -> kind.code.equals(code)).findFirst();
  }

  public static List<String> codes() {
    return Arrays.stream(values()).map(Kind::code).toList();
  }
}
