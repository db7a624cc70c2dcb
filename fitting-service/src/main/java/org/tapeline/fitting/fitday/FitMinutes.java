package org.tapeline.fitting.fitday;

/**
 * The length of a slot that fits how long fit checks really take: the shortest in which four checks
 * of five are done, so that a row of them keeps its hours although some take longer. The field's
 * own checks count; where there are few of them the association's count with them, and where those
 * are few too the usual 15 minutes. Common practice, no source.
 *
 * @param minutes length of a slot; a multiple of 5 from 5 to 120
 * @param within how many of the field's checks took no longer
 * @param checks how many of the field's checks were counted
 */
public record FitMinutes(int minutes, long within, long checks) {
  static final int USUAL = 15;

  /** A check that takes longer was left open, and says nothing of how long one takes. */
  static final int LONGEST = 120;

  private static final int STEP = 5;
  private static final double DONE = 0.8;

  /** So many checks of one's own weigh as much as what is known from elsewhere. */
  private static final double WEIGHT = 20;

  /**
   * @param association those of all fields, this one among them
   */
  static FitMinutes of(FitLengths field, FitLengths association) {
    int minutes = STEP;
    while (minutes < LONGEST && done(minutes, field, association) < DONE) {
      minutes += STEP;
    }
    return new FitMinutes(minutes, field.within(minutes), field.count());
  }

  /** The share of checks that are done within so many minutes, drawn to what is usual. */
  private static double done(int minutes, FitLengths field, FitLengths association) {
    double usual = minutes >= USUAL ? 1 : 0;
    double everywhere = drawn(association, minutes, usual);
    return drawn(field, minutes, everywhere);
  }

  private static double drawn(FitLengths lengths, int minutes, double towards) {
    return (lengths.within(minutes) + WEIGHT * towards) / (lengths.count() + WEIGHT);
  }

  /** Where the figure is from, in a sentence. */
  public String said() {
    return checks == 0
        ? "No check at this field was counted yet. By what is known elsewhere: "
            + minutes
            + " minutes for a fit."
        : "%d of %d checks at this field took %d minutes or less: %d minutes for a fit."
            .formatted(within, checks, minutes, minutes);
  }
}
