package org.tapeline.inventory.reservation;

/**
 * What counts in the search for a helmet, all of it in minutes of travel so that it can be added
 * and said: data in {@code policy/search.json}. Model and size are no weights: they are what the
 * fit check asked for, and nothing makes up for another size.
 *
 * @param version rises with each change
 * @param source where the weights come from
 * @param elsewhere for a helmet that is not at the field and comes the next morning
 * @param wayUnknown instead of the minutes of a way that nobody entered
 * @param perMark for each damage report of a mark on the surface since it was last reconditioned
 * @param mostMarks further marks count no more
 * @param daysEnough days of certification left that are enough
 * @param perDayMissing for each day that is missing to that
 * @param certificationUnknown for a helmet of which nobody knows until when it is certified
 */
public record SearchWeights(
    int version,
    String source,
    double elsewhere,
    double wayUnknown,
    double perMark,
    int mostMarks,
    int daysEnough,
    double perDayMissing,
    double certificationUnknown) {

  /**
   * @throws IllegalArgumentException for weights below nothing or beyond all measure, without a
   *     source, or when not to know the certification would be better than that it ends today
   */
  public SearchWeights {
    if (version < 1 || source == null || source.isBlank()) {
      throw new IllegalArgumentException("The weights need a version and a source");
    }
    double[] all = {elsewhere, wayUnknown, perMark, mostMarks, daysEnough, perDayMissing};
    for (double weight : all) {
      if (!(weight >= 0 && weight <= 100_000)) {
        throw new IllegalArgumentException("A weight is 0 to 100000, not " + weight);
      }
    }
    if (!(certificationUnknown >= daysEnough * perDayMissing && certificationUnknown <= 1e9)) {
      throw new IllegalArgumentException(
          "An unknown certification must count at least as much as one that ends today");
    }
  }
}
