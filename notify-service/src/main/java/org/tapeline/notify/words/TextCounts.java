package org.tapeline.notify.words;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What readability is worked out from. Addresses of pages are left out: nobody reads them. "a. m."
 * is a word, not two ends of a sentence.
 *
 * @param words 1 or more
 * @param sentences 1 or more
 * @param syllables 1 or more
 */
record TextCounts(long words, long sentences, long syllables) {
  private static final Pattern ADDRESS = Pattern.compile("https?://\\S+");
  private static final Pattern HALF_OF_DAY = Pattern.compile("\\b([ap])\\. m\\.");
  private static final Pattern SENTENCE = Pattern.compile("[.!?]+[\"”]?(\\s|$)");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}'-]*");

  TextCounts {
    if (words < 1 || sentences < 1 || syllables < 1) {
      throw new IllegalArgumentException("There is nothing to read");
    }
  }

  static TextCounts of(String text, ToIntFunction<String> syllables) {
    String read = ADDRESS.matcher(text).replaceAll("").strip();
    String joined = HALF_OF_DAY.matcher(read).replaceAll("$1m");
    List<String> words = WORD.matcher(joined).results().map(MatchResult::group).toList();
    long ends = SENTENCE.matcher(joined).results().count();
    boolean open = !joined.isEmpty() && !SENTENCE.matcher(joined.substring(lastFew(joined))).find();
    return new TextCounts(
        words.size(), ends + (open ? 1 : 0), words.stream().mapToInt(syllables).sum());
  }

  private static int lastFew(String text) {
    return Math.max(0, text.length() - 2);
  }

  double wordsPerSentence() {
    return (double) words / sentences;
  }

  double syllablesPerWord() {
    return (double) syllables / words;
  }
}
