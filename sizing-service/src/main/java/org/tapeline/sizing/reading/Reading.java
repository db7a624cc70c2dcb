package org.tapeline.sizing.reading;

import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/**
 * One reading of the tape.
 *
 * @param entered as it was understood, exact, such as {@code 22 7/8 in}
 * @param length the same in millimetres
 */
public record Reading(String entered, Millimetres length) {

  /** Said back to the measurer: {@code 22 7/8 in, 581 mm}. */
  public String saidBack() {
    return Inches.say(length) + ", " + Math.round(length.value()) + " mm";
  }
}
