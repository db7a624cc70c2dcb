package org.tapeline.inventory.chart;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Lines that differ by mark and dash as well as by colour, each with its band behind it. */
final class LinesDrawing {
  private LinesDrawing() {}

  static String svg(BandedLines said, boolean phone) {
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    DeviationRenderer look = new DeviationRenderer(true, true);
    look.setAlpha(0.18f);
    look.setDrawSeriesLineAsPath(true);
    for (int i = 0; i < said.lines().size(); i++) {
      data.addSeries(series(said.lines().get(i)));
      Ink ink = Ink.ofLine(i);
      look.setSeriesPaint(i, ink.color());
      look.setSeriesFillPaint(i, ink.color());
      look.setSeriesStroke(i, dash(i));
      look.setSeriesShape(i, mark(i));
    }
    XYPlot plot = new XYPlot(data, steps(), up(said), look);
    plot.setRangeGridlinePaint(Ink.GRID.color());
    plot.setDomainGridlinesVisible(false);
    return Drawing.svg(
        Drawing.chart(plot, said.unit() + ", with " + said.bandSaid()),
        said.title(),
        phone ? Drawing.PHONE_WIDTH : Drawing.DESK_WIDTH,
        phone ? Drawing.PHONE_HEIGHT : Drawing.DESK_HEIGHT);
  }

  private static YIntervalSeries series(BandedLines.Line line) {
    YIntervalSeries series = new YIntervalSeries(line.label());
    line.points().forEach(p -> series.add(p.step(), p.value(), p.low(), p.high()));
    return series;
  }

  private static NumberAxis steps() {
    NumberAxis steps = Drawing.axis(new NumberAxis());
    steps.setAutoRangeIncludesZero(false);
    steps.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
    steps.setNumberFormatOverride(new DecimalFormat("0"));
    return steps;
  }

  private static NumberAxis up(BandedLines said) {
    NumberAxis up = Drawing.axis(new NumberAxis());
    double most =
        said.lines().stream()
            .flatMap(l -> l.points().stream())
            .mapToDouble(BandedLines.Point::high)
            .max()
            .orElse(1);
    double least =
        said.lines().stream()
            .flatMap(l -> l.points().stream())
            .mapToDouble(BandedLines.Point::low)
            .min()
            .orElse(0);
    up.setRange(Math.min(0, least), Math.max(1, most) * 1.05);
    return up;
  }

  private static BasicStroke dash(int line) {
    float[] pattern =
        switch (line) {
          case 0 -> null;
          case 1 -> new float[] {8, 4};
          case 2 -> new float[] {2, 4};
          default -> new float[] {10, 4, 2, 4};
        };
    return new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
  }

  private static Shape mark(int line) {
    return switch (line) {
      case 0 -> new Ellipse2D.Double(-4, -4, 8, 8);
      case 1 -> new Rectangle2D.Double(-4, -4, 8, 8);
      case 2 -> ShapeUtils.createUpTriangle(5);
      default -> ShapeUtils.createDiamond(5);
    };
  }
}
