package org.tapeline.sizing.chart;

import java.util.List;
import org.tapeline.sizing.units.Millimetres;

/** A new version of a model's chart is in force. */
public record ChartPublished(String model, int version, List<Size> sizes) {

  /** A size with its range, millimetres, both ends inclusive. */
  public record Size(String size, double fromMm, double toMm) {}

  static ChartPublished of(SizeChart chart) {
    return new ChartPublished(
        chart.model(),
        chart.version(),
        chart.sizes().stream()
            .map(s -> new Size(s.size(), s.from().value(), s.to().value()))
            .toList());
  }

  SizeChart chart() {
    return new SizeChart(
        model,
        version,
        sizes.stream()
            .map(
                s ->
                    new SizeRange(s.size(), new Millimetres(s.fromMm()), new Millimetres(s.toMm())))
            .toList());
  }
}
