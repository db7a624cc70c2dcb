package org.tapeline.inventory.chart;

import java.util.List;

/**
 * What changes from year to year, with the range in which it likely lies.
 *
 * @param title what the picture is of
 * @param says the same in a sentence or two, for who does not see it
 * @param unit what is counted
 * @param stepSaid what a step is, such as {@code Year}
 * @param bandSaid what the range round a line is called
 * @param lines at most four, else nobody tells them apart
 */
public record BandedLines(
    String title, String says, String unit, String stepSaid, String bandSaid, List<Line> lines) {

  /** A line with its points, the first step first. */
  public record Line(String label, List<Point> points) {
    public Line {
      points = List.copyOf(points);
    }
  }

  /**
   * A point.
   *
   * @param step a whole number, such as a year
   */
  public record Point(int step, double value, double low, double high) {
    /**
     * @throws IllegalArgumentException when the value is not within its band, or is no number
     */
    public Point {
      Bands.check(value, low, high);
    }
  }

  /**
   * @throws IllegalArgumentException for no line, more than four, or one without points
   */
  public BandedLines {
    lines = List.copyOf(lines);
    if (lines.isEmpty() || lines.size() > 4 || lines.stream().anyMatch(l -> l.points().isEmpty())) {
      throw new IllegalArgumentException("A chart needs one to four lines with points");
    }
  }
}
