package org.tapeline.journal;

import java.util.regex.Pattern;

/**
 * A text with a character that is none: NUL, which no text column of PostgreSQL holds, or half of a
 * surrogate pair, which no encoding writes. An event with one would be stored here and stop its
 * readers.
 */
public final class NotText extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** NUL as JSON writes it: an odd number of backslashes, then u0000. */
  private static final Pattern NUL_IN_JSON = Pattern.compile("(?<!\\\\)(\\\\\\\\)*\\\\u0000");

  private NotText() {
    super("The text has a character that is none");
  }

  public static boolean isText(String text) {
    return text.codePoints().noneMatch(c -> c == 0 || (c >= 0xD800 && c <= 0xDFFF));
  }

  /**
   * @throws NotText when one of the texts in the JSON is none
   */
  static String checked(String json) {
    if (NUL_IN_JSON.matcher(json).find() || !isText(json)) {
      throw new NotText();
    }
    return json;
  }
}
