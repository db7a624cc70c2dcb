package org.tapeline.notify.words;

import java.util.List;

/** Several names as a reader says them: {@code Mia, Leo and Ana}. */
public final class NameList {
  private NameList() {}

  /** Joined with "and". */
  public static String and(List<String> names, Language language) {
    return joined(
        names,
        language == Language.SPANISH ? spanish(names, "(?i)h?[iyí](?![aeo]).*", "e", "y") : "and");
  }

  /** Joined with "or". */
  public static String or(List<String> names, Language language) {
    return joined(
        names, language == Language.SPANISH ? spanish(names, "(?i)h?[oó].*", "u", "o") : "or");
  }

  /** Before the same sound, Spanish takes another word: {@code Mia e Ivo}. */
  private static String spanish(List<String> names, String sound, String before, String otherwise) {
    return !names.isEmpty() && names.getLast().matches(sound) ? before : otherwise;
  }

  private static String joined(List<String> names, String word) {
    return names.size() < 2
        ? String.join("", names)
        : String.join(", ", names.subList(0, names.size() - 1))
            + " "
            + word
            + " "
            + names.getLast();
  }
}
