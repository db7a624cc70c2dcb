package org.tapeline.journal.quarkus.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Which of the keys and passwords that a service needs in earnest are not given, or are none: a key
 * that is made at start parts the copies of a service from each other and ends with the process,
 * and one that was copied from an example is known to everybody.
 */
final class NeededSecrets {
  /** As of {@link org.tapeline.journal.token.SignedTokens#LEAST_BYTES}. */
  private static final int LEAST_CHARACTERS = 32;

  /** So begin the places for them in the examples of {@code deploy}. */
  private static final String EXAMPLE = "put-";

  private NeededSecrets() {}

  /**
   * A sentence for each that is wrong; the values are not repeated.
   *
   * @param names of the settings
   * @param settings their values, where there is one
   */
  static List<String> wrong(List<String> names, Function<String, Optional<String>> settings) {
    List<String> wrong = new ArrayList<>();
    for (String name : names) {
      String value = settings.apply(name).map(String::strip).orElse("");
      if (value.isEmpty()) {
        wrong.add(variable(name) + " is not set.");
      } else if (value.startsWith(EXAMPLE)) {
        wrong.add(variable(name) + " is still the example's.");
      } else if (!name.endsWith("password") && value.length() < LEAST_CHARACTERS) {
        wrong.add(variable(name) + " has fewer than " + LEAST_CHARACTERS + " characters.");
      }
    }
    return wrong;
  }

  /** As settings are written in the environment. */
  static String variable(String name) {
    return name.replaceAll("[^A-Za-z0-9]", "_").toUpperCase(Locale.ROOT);
  }
}
