package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * What fitting said of a player in a helmet.
 *
 * @param place the field; empty where the event does not say it
 * @param why the failed checks, or why a sign-off ended, as codes with commas between; else empty
 */
public record HelmetFit(Kind kind, UUID player, Optional<String> place, String why, Instant at) {

  /** What happened. */
  public enum Kind {
    TRIED("tried"),
    PASSED("passed"),
    FAILED("failed"),
    SIGNED_OFF("signed-off"),
    WITHDRAWN("withdrawn"),
    LAPSED("lapsed");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    public String code() {
      return code;
    }

    static Kind of(String code) {
      for (Kind kind : values()) {
        if (kind.code.equals(code)) {
          return kind;
        }
      }
      throw new IllegalArgumentException("No such kind of fit: " + code);
    }
  }
}
