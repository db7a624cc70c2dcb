package org.tapeline.sizing.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tapeline.sizing.units.Millimetres;

/** Understands a reading as people write it: {@code 22 7/8"}, {@code 58,1 cm}, {@code 581}. */
public final class ReadingText {
  private static final int LONGEST = 40;
  private static final String EXAMPLE = "Write for example 22 7/8 in, 58.1 cm or 581 mm.";
  private static final Map<String, String> FRACTIONS =
      Map.ofEntries(
          Map.entry("½", " 1/2"),
          Map.entry("¼", " 1/4"),
          Map.entry("¾", " 3/4"),
          Map.entry("⅛", " 1/8"),
          Map.entry("⅜", " 3/8"),
          Map.entry("⅝", " 5/8"),
          Map.entry("⅞", " 7/8"),
          Map.entry("⁄", "/"),
          Map.entry("″", "\""),
          Map.entry("”", "\""),
          Map.entry("“", "\""),
          Map.entry("''", "\""),
          Map.entry("′′", "\""),
          Map.entry("·", "."),
          Map.entry(",", "."));
  private static final Pattern FORM =
      Pattern.compile(
          "(?<whole>[0-9]{1,3})(?:\\.(?<decimals>[0-9]{1,4}))?"
              + "(?:[ -](?<above>[0-9]{1,2}) ?/ ?(?<below>2|4|8|16|32))?"
              + " ?(?<unit>inches|inch|in\\.?|\"|cm|mm)?");

  private ReadingText() {}

  /** What was understood, or why not. */
  public sealed interface Understood {
    /** A reading. */
    record Ok(Reading reading) implements Understood {}

    /** No reading; the sentence says why and gives an example. */
    record Not(String reason) implements Understood {}
  }

  /**
   * A number without a unit is taken for inches (15 to 27), centimetres (38 to 68) or millimetres
   * (380 to 680); anything else is refused.
   */
  public static Understood understand(String text) {
    if (text == null || text.isBlank()) {
      return not("Enter what the tape shows.");
    }
    if (text.length() > LONGEST) {
      return not("That is too long for a reading.");
    }
    Matcher m = FORM.matcher(plain(text));
    if (!m.matches()) {
      return not("\"" + text.strip() + "\" is not a reading.");
    }
    boolean fraction = m.group("above") != null;
    if (fraction && m.group("decimals") != null) {
      return not("A reading has either decimals or a fraction, not both.");
    }
    if (fraction && Integer.parseInt(m.group("above")) >= Integer.parseInt(m.group("below"))) {
      return not(m.group("above") + "/" + m.group("below") + " is not a part of an inch.");
    }
    return withUnit(m, fraction);
  }

  private static Understood withUnit(Matcher m, boolean fraction) {
    BigDecimal number = number(m);
    Unit unit = m.group("unit") == null ? guess(number, fraction) : unit(m.group("unit"));
    if (unit == null) {
      return not(
          "Without a unit this could not be a head: inches lie between 15 and 27, centimetres"
              + " between 38 and 68, millimetres between 380 and 680.");
    }
    if (fraction && unit != Unit.INCH) {
      return not("A fraction goes with inches only.");
    }
    if (!unit.plausible(number)) {
      return not("A head measures " + unit.range() + ".");
    }
    double mm = number.multiply(unit.millimetres(), MathContext.DECIMAL64).doubleValue();
    return new Understood.Ok(new Reading(said(m, unit), new Millimetres(mm)));
  }

  private static String plain(String text) {
    String plain = text.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    for (Map.Entry<String, String> sign : FRACTIONS.entrySet()) {
      plain = plain.replace(sign.getKey(), sign.getValue());
    }
    return plain.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").replaceAll(" ?- ?", "-").strip();
  }

  private static BigDecimal number(Matcher m) {
    String decimals = m.group("decimals") == null ? "" : "." + m.group("decimals");
    BigDecimal number = new BigDecimal(m.group("whole") + decimals);
    return m.group("above") == null
        ? number
        : number.add(
            new BigDecimal(m.group("above"))
                .divide(new BigDecimal(m.group("below")), MathContext.DECIMAL64));
  }

  private static Unit unit(String text) {
    return switch (text) {
      case "cm" -> Unit.CENTIMETRE;
      case "mm" -> Unit.MILLIMETRE;
      default -> Unit.INCH;
    };
  }

  /** By plausibility; the ranges of the units do not overlap. */
  private static Unit guess(BigDecimal number, boolean fraction) {
    for (Unit unit : Unit.values()) {
      if (unit.plausible(number) && (!fraction || unit == Unit.INCH)) {
        return unit;
      }
    }
    return null;
  }

  private static String said(Matcher m, Unit unit) {
    String decimals = m.group("decimals") == null ? "" : "." + m.group("decimals");
    String fraction =
        m.group("above") == null ? "" : " " + m.group("above") + "/" + m.group("below");
    return m.group("whole") + decimals + fraction + " " + unit.symbol();
  }

  private static Understood not(String reason) {
    return new Understood.Not(reason + " " + EXAMPLE);
  }
}
