package org.tapeline.fitting.phone;

/**
 * The tag on a helmet as it is typed: letters and digits, the last one a check character (ISO/IEC
 * 7064, MOD 37,36), so that one wrong character, or two that changed places, is noticed at once.
 */
final class TagText {
  private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private TagText() {}

  /** What is wrong with it, and what to do; empty when it can be a tag. */
  static String problem(String typed) {
    String tag = CommandJson.tag(typed);
    if (tag.isEmpty()) {
      return "Enter or scan the helmet's tag.";
    }
    if (!tag.matches("[A-Z0-9]{3,30}")) {
      return "A tag is 3 to 30 letters and digits.";
    }
    boolean fits =
        checkCharacter(tag.substring(0, tag.length() - 1)) == tag.charAt(tag.length() - 1);
    return fits ? "" : "The check character at the end does not fit. Read the tag again.";
  }

  static char checkCharacter(String body) {
    int product = 36;
    for (char c : body.toCharArray()) {
      int sum = (product + ALPHABET.indexOf(c)) % 36;
      product = (sum == 0 ? 36 : sum) * 2 % 37;
    }
    return ALPHABET.charAt((37 - product) % 36);
  }
}
