package org.tapeline.inventory.helmet;

/**
 * The tag on a helmet: letters and digits, the last one a check character (ISO 7064 MOD 37,36), so
 * that one wrong character, or two that changed places, is noticed.
 *
 * @param value 3 to 30 of A-Z and 0-9, check character included
 */
public record AssetTag(String value) {
  private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  /**
   * @throws IllegalArgumentException when it is no tag, or the check character does not fit
   */
  public AssetTag {
    if (!value.matches("[A-Z0-9]{3,30}")) {
      throw new IllegalArgumentException("A tag is 3 to 30 capital letters and digits.");
    }
    String body = value.substring(0, value.length() - 1);
    if (checkCharacter(body) != value.charAt(value.length() - 1)) {
      throw new IllegalArgumentException(
          "The check character at the end does not fit. Read the tag again.");
    }
  }

  /** The tag that begins so. */
  public static AssetTag withCheck(String body) {
    return new AssetTag(body + checkCharacter(body));
  }

  /** ISO/IEC 7064, MOD 37,36, over the 36 letters and digits. */
  static char checkCharacter(String body) {
    int product = 36;
    for (char c : body.toCharArray()) {
      int sum = (product + ALPHABET.indexOf(c)) % 36;
      product = (sum == 0 ? 36 : sum) * 2 % 37;
    }
    return ALPHABET.charAt((37 - product) % 36);
  }

  @Override
  public String toString() {
    return value;
  }
}
