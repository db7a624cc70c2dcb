package org.tapeline.inventory.chart;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One bar for each kind of thing, with the range in which the true number likely lies.
 *
 * @param title what the picture is of
 * @param says the same in a sentence or two, for who does not see it
 * @param unit what is counted
 * @param valueSaid what the length of a bar is called
 * @param bandSaid what its range is called
 * @param markSaid what its mark is called; empty when no bar has one
 */
public record BandedBars(
    String title,
    String says,
    String unit,
    String valueSaid,
    String bandSaid,
    String markSaid,
    List<Bar> bars) {

  /**
   * A bar.
   *
   * @param low at most {@code value}
   * @param high at least {@code value}
   * @param mark something to compare it with, such as what is there
   */
  public record Bar(String label, double value, double low, double high, OptionalDouble mark) {
    /**
     * @throws IllegalArgumentException when the value is not within its band, or is no number
     */
    public Bar {
      Bands.check(value, low, high);
    }
  }

  /**
   * @throws IllegalArgumentException without a bar, or with two of one label
   */
  public BandedBars {
    bars = List.copyOf(bars);
    if (bars.isEmpty() || bars.stream().map(Bar::label).distinct().count() < bars.size()) {
      throw new IllegalArgumentException("A chart needs bars, each with a label of its own");
    }
  }
}
