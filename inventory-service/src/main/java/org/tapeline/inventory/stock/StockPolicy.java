package org.tapeline.inventory.stock;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How the books of parts are kept: data, validated when it is read.
 *
 * @param version rises with each change
 * @param source where the rules come from
 * @param seasonBegins month and day; each part is counted once from then on
 * @param countReasons what may explain a variance
 * @param moveReasons why parts may be moved by hand
 */
public record StockPolicy(
    int version,
    String source,
    String seasonBegins,
    List<Reason> countReasons,
    List<Reason> moveReasons) {

  /** A code with the words for it. */
  public record Reason(String code, String said) {}

  /**
   * @throws IllegalArgumentException for one without version, source, a day on which the season
   *     begins, or reasons; and for a code that is none or listed twice
   */
  public StockPolicy {
    if (version < 1 || source == null || source.isBlank()) {
      throw new IllegalArgumentException("The stock policy needs a version and a source");
    }
    monthDay(seasonBegins);
    check(countReasons);
    check(moveReasons);
  }

  private static void check(List<Reason> reasons) {
    Set<String> seen = new HashSet<>();
    for (Reason reason : reasons) {
      boolean code = reason.code() != null && reason.code().matches("[a-z][a-z-]{0,29}");
      if (!code || reason.said() == null || reason.said().isBlank() || !seen.add(reason.code())) {
        throw new IllegalArgumentException("A reason without code or words, or twice: " + reason);
      }
    }
    if (seen.isEmpty()) {
      throw new IllegalArgumentException("The stock policy needs reasons");
    }
  }

  private static MonthDay monthDay(String text) {
    try {
      return MonthDay.parse("--" + text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("Not a month and day such as 08-01: " + text, e);
    }
  }

  /** The first day of the season in which that day is. */
  public LocalDate seasonOf(LocalDate day) {
    LocalDate begins = monthDay(seasonBegins).atYear(day.getYear());
    return begins.isAfter(day) ? begins.minusYears(1) : begins;
  }

  public boolean explainsVariance(String code) {
    return countReasons.stream().anyMatch(r -> r.code().equals(code));
  }

  public boolean explainsMove(String code) {
    return moveReasons.stream().anyMatch(r -> r.code().equals(code));
  }
}
