package org.tapeline.notify.words;

/**
 * Perspicuity of Spanish by Szigriszt-Pazos (1993): 206.835 - 62.3 syllables/words -
 * words/sentences; the higher, the easier. Read by the INFLESZ scale of Barrio-Cantalejo et al.
 * (2008), made with texts for patients: to 40 very hard, 55 rather hard, 65 normal, 80 fairly easy,
 * above very easy. See docs/references.md, G.
 */
public final class Perspicuity {
  /** What every notice in Spanish is held to: fairly easy or better. */
  public static final double LEAST = 65;

  private Perspicuity() {}

  public static double of(String text) {
    return of(TextCounts.of(text, SpanishSyllables::of));
  }

  static double of(TextCounts counts) {
    return 206.835 - 62.3 * counts.syllablesPerWord() - counts.wordsPerSentence();
  }

  /** The level's name on the INFLESZ scale. */
  public static String level(double perspicuity) {
    if (perspicuity > 80) {
      return "very easy";
    }
    if (perspicuity > LEAST) {
      return "fairly easy";
    }
    if (perspicuity > 55) {
      return "normal";
    }
    return perspicuity > 40 ? "rather hard" : "very hard";
  }
}
