package org.tapeline.sizing.reading;

import java.util.List;
import org.tapeline.sizing.units.Interval95;
import org.tapeline.sizing.units.Millimetres;

/**
 * A head circumference from two or three readings.
 *
 * @param value the mean of two or the median of three
 * @param uncertainty half the width of the interval that holds the true value in 95 of 100 cases
 */
public record Measurement(
    List<Reading> readings, Millimetres value, Millimetres uncertainty, Method method) {

  /** How the value follows from the readings. */
  public enum Method {
    MEAN_OF_TWO("mean-of-two"),
    MEDIAN_OF_THREE("median-of-three");

    private final String code;

    Method(String code) {
      this.code = code;
    }

    public String code() {
      return code;
    }
  }

  /** Either a measurement, or the word that a third reading is needed. */
  public sealed interface Result {
    /** Enough readings. */
    record Ok(Measurement measurement) implements Result {}

    /** The two readings lie too far apart. */
    record ThirdNeeded(Millimetres apart) implements Result {}
  }

  /** Largest difference of two readings of a head: WHO MGRS, from memory. */
  public static final Millimetres TOLERANCE = new Millimetres(5);

  /** Variance of the median of three normal values over that of one. */
  private static final double MEDIAN_OF_THREE = 0.44867;

  public Measurement {
    readings = List.copyOf(readings);
  }

  /**
   * @param readings two or three
   * @param errorMm technical error of measurement of the measurer, mm: the standard deviation of a
   *     single reading
   * @throws IllegalArgumentException for another number of readings
   */
  public static Result of(List<Reading> readings, double errorMm) {
    return switch (readings.size()) {
      case 2 -> ofTwo(readings, errorMm);
      case 3 -> new Result.Ok(ofThree(readings, errorMm));
      default ->
          throw new IllegalArgumentException("Two or three readings, not " + readings.size());
    };
  }

  private static Result ofTwo(List<Reading> readings, double errorMm) {
    Millimetres first = readings.get(0).length();
    Millimetres second = readings.get(1).length();
    Millimetres apart = first.apartFrom(second);
    if (apart.compareTo(TOLERANCE) > 0) {
      return new Result.ThirdNeeded(apart);
    }
    Millimetres mean = new Millimetres((first.value() + second.value()) / 2);
    return new Result.Ok(new Measurement(readings, mean, within(errorMm, 0.5), Method.MEAN_OF_TWO));
  }

  private static Measurement ofThree(List<Reading> readings, double errorMm) {
    Millimetres median = readings.stream().map(Reading::length).sorted().toList().get(1);
    return new Measurement(
        readings, median, within(errorMm, MEDIAN_OF_THREE), Method.MEDIAN_OF_THREE);
  }

  private static Millimetres within(double errorMm, double varianceShare) {
    return new Millimetres(Interval95.halfWidth(errorMm * Math.sqrt(varianceShare)));
  }
}
