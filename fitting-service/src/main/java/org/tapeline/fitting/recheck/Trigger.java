package org.tapeline.fitting.recheck;

import java.util.Arrays;
import java.util.Optional;

/** What makes a re-check due. The codes stand in the plan and in {@code recheck-due}. */
public enum Trigger {
  WEEKLY("weekly"),
  HAIR_CHANGED("hair-changed"),
  COLDER("colder"),
  HOTTER("hotter"),
  HIGHER("higher"),
  LOWER("lower"),
  NEAR_EDGE("near-edge"),
  REMEASURE_DUE("remeasure-due"),
  COSMETIC_DAMAGE("cosmetic-damage"),
  SUSPECTED_CONCUSSION("suspected-concussion");

  private final String code;

  Trigger(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }

  /** Whether it is about the air in the liner, which the weather brings and takes away again. */
  public boolean air() {
    return this == COLDER || this == HOTTER || this == HIGHER || this == LOWER;
  }

  public static Optional<Trigger> of(String code) {
    return Arrays.stream(values()).filter(t -> t.code.equals(code)).findFirst();
  }
}
