package org.tapeline.sizing.chart;

import java.util.Locale;
import org.tapeline.sizing.units.Millimetres;

/**
 * A size with the heads that it is made for.
 *
 * @param size its word, such as {@code youth-medium}
 * @param from smallest head, inclusive
 * @param to largest head, inclusive; above {@code from}
 */
public record SizeRange(String size, Millimetres from, Millimetres to) {

  /** Far below what a tape shows, but above what a conversion from inches adds. */
  static final double NOTHING_MM = 1e-6;

  public SizeRange {
    if (!size.matches("[a-z0-9][a-z0-9-]{0,29}")) {
      throw new IllegalArgumentException("Not a size: " + size);
    }
    if (from.compareTo(to) >= 0) {
      throw new IllegalArgumentException("The range of " + size + " is upside down");
    }
  }

  public boolean holds(Millimetres head) {
    return from.compareTo(head) <= 0 && head.compareTo(to) <= 0;
  }

  /** Whether some head would lie in both. */
  public boolean overlaps(SizeRange other) {
    return from.compareTo(other.to) <= 0 && other.from.compareTo(to) <= 0;
  }

  /** The same word, and the same ends to a millionth of a millimetre. */
  public boolean sameAs(SizeRange other) {
    return size.equals(other.size)
        && from.apartFrom(other.from).value() < NOTHING_MM
        && to.apartFrom(other.to).value() < NOTHING_MM;
  }

  /** As people say it: {@code Youth medium}. */
  public String said() {
    return said(size);
  }

  public static String said(String size) {
    String words = size.replace("x-large", "extra large").replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
