package org.tapeline.sizing.chart;

import java.util.List;
import org.tapeline.sizing.units.Millimetres;

/** A chart of the invented Model A, with a gap of 3 mm between medium and large. */
public final class DemoLikeChart {
  private DemoLikeChart() {}

  public static SizeChart modelA() {
    return new SizeChart(
        "model-a",
        1,
        List.of(
            range("youth-small", 495, 520),
            range("youth-medium", 520.5, 556),
            range("youth-large", 559, 590),
            range("youth-x-large", 590.5, 620)));
  }

  static SizeRange range(String size, double from, double to) {
    return new SizeRange(size, new Millimetres(from), new Millimetres(to));
  }
}
