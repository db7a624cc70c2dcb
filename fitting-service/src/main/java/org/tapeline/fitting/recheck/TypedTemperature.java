package org.tapeline.fitting.recheck;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An air temperature as people type it: {@code 4}, {@code -3,5 °C}, {@code 39 F}. */
public final class TypedTemperature {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([+-]?[0-9]{1,3}(?:\\.[0-9]{1,2})?) ?°? ?([CF]?)");
  private static final double COLDEST = -40;
  private static final double HOTTEST = 60;

  private TypedTemperature() {}

  /**
   * @param unit {@code C} or {@code F}, for what is typed without one
   * @return degrees Celsius to tenths, -40 to 60; empty for anything else
   */
  public static Optional<Double> celsius(String typed, String unit) {
    String plain =
        (typed == null ? "" : typed)
            .strip()
            .toUpperCase(Locale.ROOT)
            .replace(',', '.')
            .replace('\u2212', '-');
    Matcher parts = NUMBER_AND_UNIT.matcher(plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    double value = Double.parseDouble(parts.group(1));
    String said = parts.group(2).isEmpty() ? unit : parts.group(2);
    return switch (said == null ? "" : said) {
      case "C" -> sensible(value);
      case "F" -> sensible((value - 32) / 1.8);
      default -> Optional.empty();
    };
  }

  /** What the contract of {@code conditions-recorded} allows. */
  public static Optional<Double> sensible(double celsius) {
    double rounded = Math.round(celsius * 10) / 10.0;
    return rounded >= COLDEST && rounded <= HOTTEST ? Optional.of(rounded) : Optional.empty();
  }
}
