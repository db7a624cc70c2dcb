package org.tapeline.notify.words;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words with places in braces: {@code Ask the coach of {team}.} Refused are blank words, a line
 * break (a subject must not smuggle in a header) and an unpaired brace.
 */
public record Sentence(String pattern) {
  static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  public Sentence {
    if (pattern.isBlank() || pattern.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException("Words are missing or hold a line break: " + pattern);
    }
    if (PLACE.matcher(pattern).replaceAll("").matches(".*[{}].*")) {
      throw new IllegalArgumentException("A brace is left over in: " + pattern);
    }
  }

  /** The names of its places. */
  public Set<String> places() {
    Set<String> names = new TreeSet<>();
    PLACE.matcher(pattern).results().forEach(place -> names.add(place.group(1)));
    return names;
  }

  /**
   * Fills its places in.
   *
   * @throws IllegalArgumentException when a fact is missing
   */
  public String fill(Facts facts) {
    String filled =
        PLACE
            .matcher(pattern)
            .replaceAll(place -> Matcher.quoteReplacement(facts.get(place.group(1))));
    return startLarge(filled.strip());
  }

  /** A sentence may start with a fact that is written small: "your player". */
  static String startLarge(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.codePointAt(0);
    return Character.toString(Character.toUpperCase(first))
        + text.substring(Character.charCount(first));
  }
}
