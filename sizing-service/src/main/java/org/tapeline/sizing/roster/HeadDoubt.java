package org.tapeline.sizing.roster;

import java.util.Optional;
import org.tapeline.sizing.growth.HeadForAge;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/**
 * Why a head should be looked at again before it is recorded.
 *
 * @param code smaller-than-before or unusual-for-age
 */
record HeadDoubt(String code, String sentence) {

  /**
   * Empty when the value is a usual one.
   *
   * @param before the head before this one
   * @param forAge where the head lies among children of the age
   */
  static Optional<HeadDoubt> of(
      Millimetres now, Optional<Millimetres> before, Optional<HeadForAge> forAge) {
    Optional<String> shrunk =
        before
            .filter(last -> last.value() - now.value() > Measurement.TOLERANCE.value())
            .map(last -> shrunk(last, last.value() - now.value()));
    Optional<String> unusual = forAge.filter(HeadForAge::unusual).map(HeadForAge::said);
    if (shrunk.isEmpty() && unusual.isEmpty()) {
      return Optional.empty();
    }
    String why = (unusual.orElse("") + " " + shrunk.orElse("")).strip();
    return Optional.of(
        new HeadDoubt(
            shrunk.isPresent() ? "smaller-than-before" : "unusual-for-age",
            why + " Measure again, or confirm that it is right."));
  }

  private static String shrunk(Millimetres last, double fallMm) {
    return "The last reading was "
        + Inches.say(last)
        + ", this one is "
        + Math.round(fallMm)
        + " mm smaller. Heads do not shrink.";
  }
}
