package org.tapeline.notify.words;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Flesch-Kincaid grade level of English: 0.39 words/sentences + 11.8 syllables/words - 15.59
 * (Kincaid et al. 1975, see docs/references.md, G). Syllables are counted by groups of vowels, less
 * a silent final e; numbers count as one. A colon does not end a sentence.
 */
public final class ReadingGrade {
  /** What every notice in English is held to. */
  public static final double MOST = 6.0;

  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

  /** What groups of vowels miscount in our own words. */
  private static final Map<String, Integer> EXCEPTIONS =
      Map.of("guardian", 3, "guardians", 3, "area", 3, "being", 2, "sideline", 2, "mia", 2);

  private ReadingGrade() {}

  public static double of(String text) {
    return of(TextCounts.of(text, ReadingGrade::syllables));
  }

  static double of(TextCounts counts) {
    return 0.39 * counts.wordsPerSentence() + 11.8 * counts.syllablesPerWord() - 15.59;
  }

  static int syllables(String word) {
    // A y between two vowels starts a syllable: play-er.
    String small =
        word.toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z]", "")
            .replaceAll("(?<=[aeou]y)(?=[aeiou])", "-");
    Integer known = EXCEPTIONS.get(small);
    if (known != null) {
      return known;
    }
    int groups = (int) VOWELS.matcher(small).results().count();
    boolean silentEnd =
        small.matches(".*[^aeiouyl]e")
            || small.matches(".*[^aeioutdy]ed")
            || small.matches(".*[aeiouy][^aeiouy]+es") && !small.matches(".*(s|x|z|ch|sh)es");
    return Math.max(1, silentEnd && groups > 1 ? groups - 1 : groups);
  }
}
