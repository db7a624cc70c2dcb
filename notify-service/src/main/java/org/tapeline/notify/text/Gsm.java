package org.tapeline.notify.text;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Map;

/**
 * The alphabet of text messages and how many segments a text takes: 3GPP TS 23.038 (once GSM
 * 03.38), section 6.2.1, and the user data header of TS 23.040 that joins segments; both from
 * memory.
 *
 * <p>One segment holds 160 characters of the default alphabet (7 bits each) or 70 of UCS-2; of more
 * than one, each holds 153 or 67, for the header takes 6 octets. A character of the extension table
 * counts twice and is never cut in two; neither is a pair of surrogates.
 */
public final class Gsm {
  private static final String DEFAULT =
      "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?"
          + "¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";
  private static final String EXTENSION = "\f^{}\\[~]|€";

  private static final Map<Integer, String> PLAINER =
      Map.of(
          (int) '\u2018', "'",
          (int) '\u2019', "'",
          (int) '\u201C', "\"",
          (int) '\u201D', "\"",
          (int) '\u2013', "-",
          (int) '\u2014', "-",
          (int) '\u2026', "...",
          (int) '\u00A0', " ",
          (int) '\u202F', " ");

  private static final int ONE_DEFAULT = 160;
  private static final int JOINED_DEFAULT = 153;
  private static final int ONE_UCS2 = 70;
  private static final int JOINED_UCS2 = 67;

  private Gsm() {}

  /** Whether a character is in the default alphabet or its extension. */
  public static boolean has(int codePoint) {
    return DEFAULT.indexOf(codePoint) >= 0 || EXTENSION.indexOf(codePoint) >= 0;
  }

  /** Whether the whole text can go in the default alphabet; otherwise it goes in UCS-2. */
  public static boolean has(String text) {
    return text.codePoints().allMatch(Gsm::has);
  }

  /** In how many segments the text goes; none for an empty one. */
  public static int segments(String text) {
    return has(text)
        ? segments(text, ONE_DEFAULT, JOINED_DEFAULT, true)
        : segments(text, ONE_UCS2, JOINED_UCS2, false);
  }

  private static int segments(String text, int one, int joined, boolean seven) {
    int[] sizes =
        text.codePoints()
            .map(c -> seven ? EXTENSION.indexOf(c) >= 0 ? 2 : 1 : Character.charCount(c))
            .toArray();
    int whole = Arrays.stream(sizes).sum();
    if (whole <= one) {
      return whole == 0 ? 0 : 1;
    }
    int segments = 1;
    int used = 0;
    for (int size : sizes) {
      if (used + size > joined) {
        segments++;
        used = 0;
      }
      used += size;
    }
    return segments;
  }

  /**
   * The text with accents left off where the alphabet lacks the letter, so that one "á" does not
   * halve what fits: "sábado" becomes "sabado", while "ñ", "ü", "é" and "¿" stay. Letters with no
   * likeness in the alphabet stay too.
   */
  public static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints().forEach(c -> plain.append(plain(c)));
    return plain.toString();
  }

  private static String plain(int codePoint) {
    String as = Character.toString(codePoint);
    if (has(codePoint)) {
      return as;
    }
    String bare =
        PLAINER.getOrDefault(
            codePoint, Normalizer.normalize(as, Normalizer.Form.NFD).replaceAll("\\p{M}", ""));
    return !bare.isEmpty() && has(bare) ? bare : as;
  }
}
