package org.tapeline.sizing.growth;

import java.util.Optional;

/** As growth references tell children apart. */
public enum Sex {
  MALE,
  FEMALE;

  /** From the roster's {@code m} or {@code f}; empty for anything else. */
  public static Optional<Sex> of(String code) {
    return switch (code == null ? "" : code) {
      case "m" -> Optional.of(MALE);
      case "f" -> Optional.of(FEMALE);
      default -> Optional.empty();
    };
  }
}
