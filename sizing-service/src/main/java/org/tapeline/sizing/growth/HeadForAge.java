package org.tapeline.sizing.growth;

import java.util.Locale;
import org.tapeline.sizing.units.Millimetres;

/**
 * Where a head lies among children of the same age and sex.
 *
 * @param below share of them with a smaller head, 0 to 1
 */
public record HeadForAge(double below, double ageYears, Millimetres head, String reference) {
  /** One child in a thousand lies below, one above: a misread tape is likelier by far. */
  private static final double RARE = 0.001;

  public boolean unusual() {
    return below < RARE || below > 1 - RARE;
  }

  /** In words, for the measurer. */
  public String said() {
    String side = below < RARE ? "smaller" : "larger";
    return String.format(
        Locale.ROOT,
        "%d mm is %s than 999 of 1000 heads at %d years (%s).",
        Math.round(head.value()),
        side,
        (int) ageYears,
        reference);
  }
}
