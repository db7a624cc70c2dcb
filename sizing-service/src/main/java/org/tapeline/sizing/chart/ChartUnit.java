package org.tapeline.sizing.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tapeline.sizing.units.Millimetres;

/** The units in which helmet makers write charts. */
public enum ChartUnit {
  MILLIMETRE("mm", 1),
  CENTIMETRE("cm", 10),
  INCH("in", Millimetres.PER_INCH);

  private static final int MOST_DECIMALS = 6;
  private static final String NUMBER = "[0-9]{1,4}(\\.[0-9]{1," + MOST_DECIMALS + "})?";

  private final String code;
  private final double mm;

  ChartUnit(String code, double mm) {
    this.code = code;
    this.mm = mm;
  }

  /** Empty when it is none of {@code mm}, {@code cm} and {@code in}. */
  public static Optional<ChartUnit> of(String code) {
    return Stream.of(values()).filter(unit -> unit.code.equals(code)).findFirst();
  }

  public String code() {
    return code;
  }

  /**
   * Reads a number with at most four digits and, after a decimal point, six decimals.
   *
   * @return empty when it is none
   */
  public Optional<Millimetres> read(String number) {
    return number.matches(NUMBER)
        ? Optional.of(millimetres(new BigDecimal(number)))
        : Optional.empty();
  }

  /**
   * The shortest number that {@link #read} makes this very length of.
   *
   * @return empty when no number in this unit does
   */
  public Optional<String> write(Millimetres length) {
    return IntStream.rangeClosed(0, MOST_DECIMALS)
        .mapToObj(decimals -> rounded(length, decimals))
        .filter(number -> millimetres(number).equals(length))
        .map(BigDecimal::toPlainString)
        .findFirst();
  }

  /** In this unit, the last decimal rounded. */
  String nearest(Millimetres length) {
    return write(length).orElseGet(() -> rounded(length, MOST_DECIMALS).toPlainString());
  }

  private Millimetres millimetres(BigDecimal number) {
    return new Millimetres(number.doubleValue() * mm);
  }

  private BigDecimal rounded(Millimetres length, int decimals) {
    return BigDecimal.valueOf(length.value() / mm).setScale(decimals, RoundingMode.HALF_UP);
  }
}
