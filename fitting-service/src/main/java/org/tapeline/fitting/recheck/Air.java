package org.tapeline.fitting.recheck;

/**
 * Air in a liner: how much room it takes elsewhere or in other weather. Ideal gas; pressure by ISO
 * 2533 / US Standard Atmosphere 1976.
 */
public final class Air {
  private static final double SEA_LEVEL_PASCALS = 101_325;
  private static final double SEA_LEVEL_KELVIN = 288.15;
  private static final double KELVIN_PER_METRE = 0.0065;

  /** g0 M / (R* L) with the constants of the standard: 9.80665, 0.0289644, 8.31432, 0.0065. */
  private static final double EXPONENT = 9.80665 * 0.0289644 / (8.31432 * KELVIN_PER_METRE);

  private static final double ZERO_CELSIUS_KELVIN = 273.15;

  /** The pound-force per square inch, pascals. */
  public static final double PASCALS_PER_PSI = 6_894.757;

  private Air() {}

  /**
   * The air around.
   *
   * @param celsius degrees Celsius, -60 to 60
   * @param altitudeM metres above sea level, -500 to 9000
   */
  public record Outside(double celsius, double altitudeM) {
    public Outside {
      if (!(celsius >= -60 && celsius <= 60)) {
        throw new IllegalArgumentException("Air temperature from -60 to 60 degrees Celsius");
      }
      if (!(altitudeM >= -500 && altitudeM <= 9000)) {
        throw new IllegalArgumentException("Altitude from -500 to 9000 m");
      }
    }
  }

  /**
   * @param altitudeM geopotential height in the troposphere; at a field's altitude it differs from
   *     the altitude by less than a thousandth
   * @return pascals
   */
  public static double pressurePascals(double altitudeM) {
    double cooling = KELVIN_PER_METRE * altitudeM / SEA_LEVEL_KELVIN;
    return SEA_LEVEL_PASCALS * Math.pow(1 - cooling, EXPONENT);
  }

  /** {@code T2/T1}: the part of the ratio that is due to the temperature. */
  public static double byTemperature(double fitCelsius, double nowCelsius) {
    return (nowCelsius + ZERO_CELSIUS_KELVIN) / (fitCelsius + ZERO_CELSIUS_KELVIN);
  }

  /** {@code P1/P2}: the part that is due to the altitude. */
  public static double byAltitude(double fitAltitudeM, double nowAltitudeM) {
    return pressurePascals(fitAltitudeM) / pressurePascals(nowAltitudeM);
  }

  /**
   * Room that the same air takes at equal feel, {@code V2/V1 = (T2/T1)*(P1/P2)}.
   *
   * @return 1 for no change, 0.95 for 5 per cent less room
   */
  public static double roomRatio(Outside fit, Outside now) {
    return byTemperature(fit.celsius(), now.celsius())
        * byAltitude(fit.altitudeM(), now.altitudeM());
  }

  /**
   * What a gauge would read now if the liner were sealed and could not give at all. A real liner
   * gives, so it is a bound.
   *
   * @param gaugePascals what it read at the fit, above the pressure around, pascals
   * @return pascals above the pressure around; negative below it
   */
  public static double sealedGaugePascals(double gaugePascals, Outside fit, Outside now) {
    double inside =
        (gaugePascals + pressurePascals(fit.altitudeM()))
            * byTemperature(fit.celsius(), now.celsius());
    return inside - pressurePascals(now.altitudeM());
  }
}
