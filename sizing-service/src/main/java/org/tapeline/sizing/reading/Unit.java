package org.tapeline.sizing.reading;

import java.math.BigDecimal;

/**
 * The units of a tape, each with the range in which a head from small child to large adult lies:
 * 380 to 680 mm. The ranges do not overlap, so a plausible number says its unit by itself.
 */
public enum Unit {
  INCH("in", new BigDecimal("25.4"), 15, 27),
  CENTIMETRE("cm", BigDecimal.TEN, 38, 68),
  MILLIMETRE("mm", BigDecimal.ONE, 380, 680);

  private final String symbol;
  private final BigDecimal millimetres;
  private final int least;
  private final int most;

  Unit(String symbol, BigDecimal millimetres, int least, int most) {
    this.symbol = symbol;
    this.millimetres = millimetres;
    this.least = least;
    this.most = most;
  }

  public String symbol() {
    return symbol;
  }

  BigDecimal millimetres() {
    return millimetres;
  }

  boolean plausible(BigDecimal number) {
    return number.compareTo(BigDecimal.valueOf(least)) >= 0
        && number.compareTo(BigDecimal.valueOf(most)) <= 0;
  }

  String range() {
    return least + " to " + most + " " + symbol;
  }
}
