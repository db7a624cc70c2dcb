package org.tapeline.inventory.chart;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.text.SimpleDateFormat;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Steps from day to day, and a dashed line at the reorder point. */
final class LevelDrawing {
  private static final Shape STROKE = new Line2D.Double(-12, 0, 12, 0);

  private LevelDrawing() {}

  static String svg(StockLevel said, boolean phone) {
    XYSeries series = new XYSeries(said.unit());
    said.days().forEach(d -> series.add(millis(d.day()), d.pieces()));
    XYStepRenderer steps = new XYStepRenderer();
    steps.setSeriesPaint(0, Ink.FIRST.color());
    steps.setSeriesStroke(0, Drawing.THICK);
    XYPlot plot = new XYPlot(new XYSeriesCollection(series), days(), up(said), steps);
    plot.setRangeGridlinePaint(Ink.GRID.color());
    plot.setDomainGridlinesVisible(false);
    said.reorderPoint()
        .ifPresent(
            at -> plot.addRangeMarker(new ValueMarker(at, Ink.SECOND.color(), Drawing.DASHED)));
    plot.setFixedLegendItems(legend(said));
    return Drawing.svg(
        Drawing.chart(plot, said.unit()),
        said.title(),
        phone ? Drawing.PHONE_WIDTH : Drawing.DESK_WIDTH,
        phone ? Drawing.PHONE_HEIGHT : Drawing.DESK_HEIGHT);
  }

  private static LegendItemCollection legend(StockLevel said) {
    LegendItemCollection legend = new LegendItemCollection();
    legend.add(new LegendItem("there", null, null, null, STROKE, Drawing.THICK, Ink.FIRST.color()));
    if (said.reorderPoint().isPresent()) {
      legend.add(
          new LegendItem(
              "reorder point", null, null, null, STROKE, Drawing.DASHED, Ink.SECOND.color()));
    }
    return legend;
  }

  private static DateAxis days() {
    TimeZone utc = TimeZone.getTimeZone("UTC");
    DateAxis days = Drawing.axis(new DateAxis(null, utc, Locale.US));
    SimpleDateFormat format = new SimpleDateFormat("MMM d", Locale.US);
    format.setTimeZone(utc);
    days.setDateFormatOverride(format);
    return days;
  }

  private static NumberAxis up(StockLevel said) {
    NumberAxis up = Drawing.axis(new NumberAxis());
    up.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
    double most = said.days().stream().mapToDouble(StockLevel.Level::pieces).max().orElse(1);
    double least = said.days().stream().mapToDouble(StockLevel.Level::pieces).min().orElse(0);
    double highest = Math.max(1, Math.max(most, said.reorderPoint().orElse(0)));
    up.setRange(Math.min(0, least), highest * 1.05);
    return up;
  }

  private static double millis(LocalDate day) {
    return day.atStartOfDay().toInstant(ZoneOffset.UTC).toEpochMilli();
  }
}
