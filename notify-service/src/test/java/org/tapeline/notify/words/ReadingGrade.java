package org.tapeline.notify.words;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Flesch-Kincaid grade level of English: 0.39 words/sentences + 11.8 syllables/words - 15.59
 * (formula from memory, see docs/references.md). Syllables are counted by groups of vowels, less a
 * silent final e; numbers count as one.
 */
final class ReadingGrade {
  private static final Pattern SENTENCE = Pattern.compile("[.!?:]+(\\s|$)");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}'-]*");
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

  private ReadingGrade() {}

  static double of(String text) {
    long words = WORD.matcher(text).results().count();
    long sentences = Math.max(1, SENTENCE.matcher(text).results().count());
    long syllables = WORD.matcher(text).results().mapToLong(word -> syllables(word.group())).sum();
    return of(words, sentences, syllables);
  }

  static double of(long words, long sentences, long syllables) {
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
  }

  static long syllables(String word) {
    String small = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    long groups = VOWELS.matcher(small).results().count();
    boolean silentEnd =
        small.matches(".*[^aeiouyl]e")
            || small.matches(".*[^aeioutdy]ed")
            || small.matches(".*[aeiouy][^aeiouy]+es") && !small.matches(".*(s|x|z|ch|sh)es");
    return Math.max(1, silentEnd && groups > 1 ? groups - 1 : groups);
  }
}
