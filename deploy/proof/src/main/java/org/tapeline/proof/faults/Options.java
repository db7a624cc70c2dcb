package org.tapeline.proof.faults;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.tapeline.proof.faults.strike.Kind;

/**
 * How to run.
 *
 * @param length of the season with its faults; what comes before and after is not counted
 * @param seed what the generators begin with
 * @param kinds of faults, at least one
 */
record Options(Duration length, long seed, List<Kind> kinds) {

  Options {
    kinds = List.copyOf(kinds);
  }

  /**
   * @throws IllegalArgumentException with what is wrong, in words
   */
  static Options of(List<String> arguments) {
    Duration length = Duration.ofMinutes(5);
    long seed = System.nanoTime() % 1_000_000;
    List<Kind> kinds = Arrays.asList(Kind.values());
    for (int i = 0; i < arguments.size(); i += 2) {
      String value = i + 1 < arguments.size() ? arguments.get(i + 1) : "";
      switch (arguments.get(i)) {
        case "--minutes" -> length = Duration.ofMillis(Math.round(number(value) * 60_000));
        case "--seed" -> seed = Math.round(number(value));
        case "--kinds" -> kinds = Arrays.stream(value.split(",")).map(Options::kind).toList();
        default -> throw new IllegalArgumentException("Unknown option " + arguments.get(i));
      }
    }
    return new Options(length, seed, kinds);
  }

  private static double number(String text) {
    try {
      double value = Double.parseDouble(text);
      if (value >= 0 && value <= 1e9) {
        return value;
      }
    } catch (NumberFormatException e) {
      // It is said below, as for a number that is out of range.
    }
    throw new IllegalArgumentException("Not a number that can be taken: '" + text + "'");
  }

  private static Kind kind(String code) {
    return Kind.of(code.strip())
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "No kind of fault: "
                        + code
                        + ". There are "
                        + String.join(", ", Kind.codes())));
  }
}
