package org.tapeline.notify.words;

import java.util.Locale;

/**
 * Counts the syllables of a Spanish word by the orthography of the Real Academia Española (from
 * memory): two open vowels are two syllables (hiatus), as is an open one beside a closed one with
 * an accent; a closed one without leans on its neighbour (diphthong, triphthong), and two different
 * closed ones are one. An h between them changes nothing. The u of que, qui, gue, gui is silent; y
 * is a vowel at the end of a word and alone. Numbers count as one.
 */
final class SpanishSyllables {
  private static final String OPEN = "aeoáéó";
  private static final String CLOSED = "iuü";
  private static final String ACCENTED = "íú";

  private SpanishSyllables() {}

  static int of(String word) {
    String sounds = sounds(word);
    int syllables = 0;
    for (int i = 0; i < sounds.length(); i++) {
      char vowel = sounds.charAt(i);
      if (isVowel(vowel) && (i == 0 || startsAnother(sounds, i))) {
        syllables++;
      }
    }
    return Math.max(1, syllables);
  }

  /** Only what is heard as a vowel; each run of consonants is a dash. */
  private static String sounds(String word) {
    return word.toLowerCase(Locale.ROOT)
        .replaceAll("(?<=q)u", "")
        .replaceAll("(?<=g)u(?=[eiéí])", "")
        .replaceAll("y$|^y$|y(?=[^aeiouáéíóúü])", "i")
        .replaceAll("(?<=[aeiouáéíóúü])h(?=[aeiouáéíóúü])", "")
        .replaceAll("[^aeiouáéíóúü]+", "-");
  }

  private static boolean startsAnother(String sounds, int at) {
    char before = sounds.charAt(at - 1);
    char vowel = sounds.charAt(at);
    if (!isVowel(before)) {
      return true;
    }
    if (isOpen(before) && isOpen(vowel) || before == vowel) {
      return true;
    }
    if (isAccented(before) && isOpen(vowel) || isOpen(before) && isAccented(vowel)) {
      return true;
    }
    // A closed vowel between two open ones goes with the second: pa-ra-no-ia.
    return isOpen(before)
        && isClosed(vowel)
        && at + 1 < sounds.length()
        && isOpen(sounds.charAt(at + 1));
  }

  private static boolean isOpen(char c) {
    return OPEN.indexOf(c) >= 0;
  }

  private static boolean isClosed(char c) {
    return CLOSED.indexOf(c) >= 0;
  }

  private static boolean isAccented(char c) {
    return ACCENTED.indexOf(c) >= 0;
  }

  private static boolean isVowel(char c) {
    return isOpen(c) || isClosed(c) || isAccented(c);
  }
}
