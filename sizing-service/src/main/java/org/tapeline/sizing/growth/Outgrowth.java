package org.tapeline.sizing.growth;

import java.time.LocalDate;
import java.util.Optional;
import org.tapeline.sizing.units.Millimetres;

/**
 * When a child may have grown out of a size.
 *
 * @param chance that the head is beyond the size by the end of the season, 0 to 1
 * @param remeasureOn day on which the chance of having grown out of it since the measurement
 *     reaches the risk that was set; a year after the measurement at the latest
 */
public record Outgrowth(double chance, LocalDate remeasureOn) {
  private static final int STEP_DAYS = 7;
  private static final int AT_LATEST_DAYS = 365;

  /**
   * @param upper largest head of the size
   * @param risk 0 to 1; growth alone counts, not that the measurement may be off
   */
  public static Outgrowth of(
      GrowthReference reference,
      Optional<Sex> sex,
      LocalDate birth,
      Projection.Measured measured,
      Millimetres upper,
      LocalDate seasonEnd,
      double risk) {
    double atFirst = beyond(reference, sex, birth, measured, upper, measured.on());
    LocalDate latest = measured.on().plusDays(AT_LATEST_DAYS);
    LocalDate day = measured.on();
    while (day.isBefore(latest)
        && beyond(reference, sex, birth, measured, upper, day) - atFirst < risk) {
      day = day.plusDays(STEP_DAYS);
    }
    return new Outgrowth(
        beyond(reference, sex, birth, measured, upper, seasonEnd),
        day.isAfter(latest) ? latest : day);
  }

  private static double beyond(
      GrowthReference reference,
      Optional<Sex> sex,
      LocalDate birth,
      Projection.Measured measured,
      Millimetres upper,
      LocalDate on) {
    return Projection.of(reference, sex, birth, measured, on).exceeds(upper);
  }
}
