package org.tapeline.inventory.helmet;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was typed or scanned as a helmet's tag, understood: the tag itself in any case, with blanks
 * and dashes; the address that our QR code holds; or a GS1 asset number (GIAI, application
 * identifier 8004, GS1 General Specifications) under the association's company prefix.
 */
public sealed interface TagText {

  /** A tag whose check character fits; whether there is such a helmet is another question. */
  record Good(AssetTag tag) implements TagText {}

  /**
   * It looks like a tag, but its check character does not fit.
   *
   * @param near tags that one slip turns into it
   */
  record Slip(String written, List<String> near, String sentence) implements TagText {}

  /** It is no tag at all. */
  record NoTag(String sentence) implements TagText {}

  /** The longest text that is looked at: our addresses are far shorter. */
  int LONGEST = 300;

  /** FNC1 as scanners send it. */
  char SEPARATOR = 0x1D;

  /** How scanners say that GS1 data follows: DataMatrix, QR code, GS1-128. */
  Pattern SYMBOLOGY = Pattern.compile("^\\](d2|Q3|C1)", Pattern.CASE_INSENSITIVE);

  /** The page of a helmet, wherever the service is reached. */
  Pattern ADDRESS =
      Pattern.compile(
          "^(?:https?://[^/\\s]+)?/?inventory/helmets/([^/?#\\s]+)(?:[/?#].*)?$",
          Pattern.CASE_INSENSITIVE);

  /**
   * @param giaiPrefix the association's GS1 company prefix, digits; empty when it has none, and
   *     then no asset number is taken
   */
  static TagText read(String typed, String giaiPrefix) {
    // FNC1 counts as a blank in Java, and must not be lost.
    String text = typed == null ? "" : typed.replaceAll("^\\s+|\\s+$", "");
    if (text.isEmpty()) {
      return new NoTag("Type or scan the tag.");
    }
    if (text.length() > LONGEST) {
      return new NoTag("This is too long for a tag. Scan it again.");
    }
    Matcher address = ADDRESS.matcher(text);
    if (address.matches()) {
      return plain(address.group(1));
    }
    if (SYMBOLOGY.matcher(text).find() || text.charAt(0) == SEPARATOR || bracketed(text)) {
      return giai(text, giaiPrefix);
    }
    return bare(text, giaiPrefix);
  }

  /** Capital letters and digits only: no blanks, dashes of any kind, dots, slashes. */
  static String written(String typed) {
    return Normalizer.normalize(typed, Normalizer.Form.NFKC)
        .toUpperCase(Locale.ROOT)
        .replaceAll("[\\s\\p{Z}\\p{Pd}\\p{Cc}\\x{2212}._/]", "");
  }

  private static boolean bracketed(String text) {
    return text.startsWith("(8004)");
  }

  /** A scanner that says nothing of the symbology still sends the asset number whole. */
  private static TagText bare(String text, String prefix) {
    String written = written(text);
    if (!prefix.isEmpty()
        && written.startsWith("8004" + prefix)
        && plain(written.substring(4 + prefix.length())) instanceof Good good) {
      return good;
    }
    return plain(text);
  }

  private static TagText plain(String text) {
    String written = written(text);
    if (!written.matches("[A-Z0-9]{3,30}")) {
      return new NoTag("A tag is 3 to 30 letters and digits. Read it again.");
    }
    try {
      return new Good(new AssetTag(written));
    } catch (IllegalArgumentException e) {
      return new Slip(written, List.copyOf(NearTags.of(written)), e.getMessage());
    }
  }

  /** A GIAI has at most 30 characters: the company prefix, then our tag. */
  private static TagText giai(String text, String prefix) {
    String elements = SYMBOLOGY.matcher(text).replaceFirst("").replaceFirst("^\\x1D", "");
    for (String element : elements.split("\\x1D")) {
      String number = element.replaceFirst("^(\\(8004\\)|8004)", "");
      if (!number.equals(element)) {
        return ours(written(number), prefix);
      }
    }
    return new NoTag("This code holds no asset number (8004). Scan the code on the helmet's tag.");
  }

  private static TagText ours(String number, String prefix) {
    if (prefix.isEmpty()) {
      return new NoTag("GS1 asset numbers are not set up here. Type the tag instead.");
    }
    if (!number.startsWith(prefix) || number.length() > 30) {
      return new NoTag("This asset number is not one of the association's.");
    }
    return plain(number.substring(prefix.length()));
  }
}
