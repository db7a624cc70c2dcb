package org.tapeline.inventory.chart;

import java.awt.Color;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The colours of a chart by what they are for. While it is drawn each is a colour that nobody would
 * choose; in the text it becomes the page's own token, so that it follows the colour scheme, and
 * prints dark on white.
 */
enum Ink {
  TEXT("var(--ink,#14202b)"),
  SOFT("var(--ink-soft,#47586a)"),
  GRID("var(--line,#b9c2c4)"),
  PAPER("var(--paper,#fdfdfb)"),
  FIRST("var(--accent,#0b5563)"),
  SECOND("var(--bad,#8f1d1d)"),
  THIRD("var(--good,#1d5e33)"),
  FOURTH("var(--warn,#7a4a00)"),
  HATCH("url(#hatch)");

  private static final Pattern PLACEHOLDER = Pattern.compile("rgb\\(1,2,(\\d+)\\)");

  private final String css;

  Ink(String css) {
    this.css = css;
  }

  Color color() {
    return new Color(1, 2, ordinal());
  }

  static Ink ofLine(int number) {
    return switch (number) {
      case 0 -> FIRST;
      case 1 -> SECOND;
      case 2 -> THIRD;
      default -> FOURTH;
    };
  }

  /**
   * Puts the tokens for the placeholders.
   *
   * @param key makes the names within this drawing its own
   */
  static String intoCss(String svg, String key) {
    return PLACEHOLDER
        .matcher(svg)
        .replaceAll(
            found -> {
              String css = values()[Integer.parseInt(found.group(1))].css;
              return Matcher.quoteReplacement(css.replace("#hatch", "#" + key + "hatch"));
            });
  }
}
