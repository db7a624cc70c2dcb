package org.tapeline.sizing.units;

/**
 * A length in millimetres.
 *
 * @param value finite and not negative
 */
public record Millimetres(double value) implements Comparable<Millimetres> {
  public static final double PER_INCH = 25.4;

  public Millimetres {
    if (!Double.isFinite(value) || value < 0) {
      throw new IllegalArgumentException("Not a length: " + value + " mm");
    }
  }

  public static Millimetres ofInches(double inches) {
    return new Millimetres(inches * PER_INCH);
  }

  public double inches() {
    return value / PER_INCH;
  }

  /** How far two lengths lie apart. */
  public Millimetres apartFrom(Millimetres other) {
    return new Millimetres(Math.abs(value - other.value));
  }

  @Override
  public int compareTo(Millimetres other) {
    return Double.compare(value, other.value);
  }
}
