package org.tapeline.inventory.chart;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much there was, day by day, and at how much more is asked for.
 *
 * @param title what the picture is of
 * @param says the same in a sentence or two, for who does not see it
 * @param unit what is counted
 * @param reorderPoint drawn as a dashed line; empty when there is none
 * @param days the earliest first; a level holds until the next one
 */
public record StockLevel(
    String title, String says, String unit, OptionalDouble reorderPoint, List<Level> days) {

  /** Pieces at the end of a day; fewer than none is a count to do. */
  public record Level(LocalDate day, double pieces) {}

  /**
   * @throws IllegalArgumentException without a day, or when the days are not in order
   */
  public StockLevel {
    days = List.copyOf(days);
    if (days.isEmpty()) {
      throw new IllegalArgumentException("A chart needs days");
    }
    for (int i = 1; i < days.size(); i++) {
      if (!days.get(i).day().isAfter(days.get(i - 1).day())) {
        throw new IllegalArgumentException("The days must be in order, each once");
      }
    }
  }
}
