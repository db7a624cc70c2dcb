package org.tapeline.notify.words;

import java.util.Locale;

/** Codes of teams, stock items, kinds and states as a person reads them. */
public final class TradeWords {
  private TradeWords() {}

  /** {@code refit-date} becomes {@code re-fit date}. */
  public static String said(String code) {
    return spaced(code)
        .replace("do not wear ", "do not wear, ")
        .replace("refit", "re-fit")
        .replace("recheck", "re-check")
        .replace("sign off", "sign-off");
  }

  /** {@code refit-date} becomes {@code Re-fit date}. */
  public static String title(String code) {
    return capital(said(code));
  }

  /** {@code U10-HAWKS} becomes {@code U10 Hawks}. */
  public static String team(String code) {
    StringBuilder words = new StringBuilder();
    for (String part : code.split("-")) {
      boolean hasDigit = part.chars().anyMatch(Character::isDigit);
      words
          .append(words.isEmpty() ? "" : " ")
          .append(hasDigit || part.isEmpty() ? part : capital(part.toLowerCase(Locale.ROOT)));
    }
    return words.toString();
  }

  /**
   * {@code jaw-pad-15mm} becomes {@code jaw pad 15mm}; {@code helmet:model-a:youth-medium} becomes
   * {@code helmet, Model A, Youth medium} in the reader's language.
   */
  public static String item(String code, Phrases phrases) {
    String[] helmet = code.split(":");
    if (helmet.length == 3 && helmet[0].equals("helmet")) {
      Facts facts =
          Facts.none().with("model", model(helmet[1])).with("size", capital(spaced(helmet[2])));
      return lower(phrases.of("item.helmet", facts));
    }
    return spaced(code);
  }

  private static String model(String code) {
    return team(code.toUpperCase(Locale.ROOT));
  }

  private static String spaced(String code) {
    return code.replace('-', ' ');
  }

  private static String capital(String word) {
    return word.isEmpty()
        ? word
        : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  private static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }
}
