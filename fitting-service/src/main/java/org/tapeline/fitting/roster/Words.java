package org.tapeline.fitting.roster;

import java.util.Locale;

/** How codes are said to people. */
public final class Words {
  private Words() {}

  /** {@code youth-medium} is said {@code Youth medium}. */
  public static String size(String code) {
    String words = code.replace('-', ' ');
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** {@code model-a} is said {@code Model A}. */
  public static String model(String code) {
    int last = code.lastIndexOf('-') + 1;
    return size(code.substring(0, last)) + code.substring(last).toUpperCase(Locale.ROOT);
  }
}
