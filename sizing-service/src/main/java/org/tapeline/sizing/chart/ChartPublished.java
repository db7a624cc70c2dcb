package org.tapeline.sizing.chart;

import java.util.List;
import org.tapeline.sizing.units.Millimetres;

/** A new version of a model's chart is in force. */
public record ChartPublished(String model, int version, List<Size> sizes) {

  /** A size with its range, millimetres, both ends inclusive. */
  public record Size(String size, double fromMm, double toMm) {
    public static Size of(SizeRange range) {
      return new Size(range.size(), range.from().value(), range.to().value());
    }

    public SizeRange range() {
      return new SizeRange(size, new Millimetres(fromMm), new Millimetres(toMm));
    }
  }

  static ChartPublished of(SizeChart chart) {
    return new ChartPublished(
        chart.model(), chart.version(), chart.sizes().stream().map(Size::of).toList());
  }

  SizeChart chart() {
    return new SizeChart(model, version, sizes.stream().map(Size::range).toList());
  }
}
