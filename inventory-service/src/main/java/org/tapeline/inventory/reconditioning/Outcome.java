package org.tapeline.inventory.reconditioning;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a helmet comes back from the reconditioner. */
public enum Outcome {
  RECERTIFIED,
  REJECTED,
  AS_IT_WENT,
  LOST;

  /** As it is written: {@code as-it-went}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Optional<Outcome> of(String code) {
    return Arrays.stream(values()).filter(o -> o.code().equals(code)).findFirst();
  }
}
