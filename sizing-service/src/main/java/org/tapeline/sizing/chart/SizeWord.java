package org.tapeline.sizing.chart;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the word for a size says of its place among the others.
 *
 * @param line {@code youth-}, {@code adult-} or empty; words of different lines have no order
 * @param rank rises from small to extra large
 */
public record SizeWord(String line, int rank) {
  private static final List<String> SMALL_TO_LARGE = List.of("small", "medium", "large", "x-large");
  private static final Pattern WORD =
      Pattern.compile("(youth-|adult-|)(" + String.join("|", SMALL_TO_LARGE) + ")");

  /** Which words there are, for whoever wrote another one. */
  static final String ALLOWED =
      "small, medium, large or x-large, with youth- or adult- before it where the helmet maker"
          + " says so";

  /** Empty when it is no word for a size. */
  public static Optional<SizeWord> of(String size) {
    Matcher word = WORD.matcher(size);
    return word.matches()
        ? Optional.of(new SizeWord(word.group(1), SMALL_TO_LARGE.indexOf(word.group(2))))
        : Optional.empty();
  }

  /** Whether this has to lie below the other in a chart. */
  public boolean isBelow(SizeWord other) {
    return line.equals(other.line) && rank < other.rank;
  }
}
