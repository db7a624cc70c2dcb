package org.tapeline.inventory.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.DefaultCategoryDataset;

/** Bars of parts that differ by colour and hatching, with a line of paper between them. */
final class StackDrawing {
  private static final Shape BOX = new Rectangle2D.Double(-7, -5, 14, 10);

  private StackDrawing() {}

  static String svg(StackedBars said, boolean phone) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    LegendItemCollection legend = new LegendItemCollection();
    StackedBarRenderer look = new StackedBarRenderer();
    look.setBarPainter(new StandardBarPainter());
    look.setShadowVisible(false);
    look.setDrawBarOutline(true);
    look.setMaximumBarWidth(0.12);
    for (int i = 0; i < said.drawn().size(); i++) {
      String part = said.drawn().get(i);
      said.bars().keySet().forEach(bar -> data.addValue(said.height(bar, part), part, bar));
      look.setSeriesPaint(i, color(i));
      look.setSeriesOutlinePaint(i, Ink.PAPER.color());
      look.setSeriesOutlineStroke(i, Drawing.THIN);
      legend.add(new LegendItem(part, null, null, null, BOX, color(i)));
    }
    CategoryAxis across = Drawing.axis(new CategoryAxis());
    NumberAxis up = Drawing.axis(new NumberAxis());
    up.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
    up.setRange(
        0,
        1.05 * Math.max(1, said.bars().keySet().stream().mapToDouble(said::total).max().orElse(1)));
    CategoryPlot plot = new CategoryPlot(data, across, up, look);
    plot.setOrientation(phone ? PlotOrientation.HORIZONTAL : PlotOrientation.VERTICAL);
    plot.setRangeGridlinePaint(Ink.GRID.color());
    plot.setFixedLegendItems(legend);
    int width = phone ? Drawing.PHONE_WIDTH : Drawing.DESK_WIDTH;
    int height = phone ? 140 + 38 * said.bars().size() : Drawing.DESK_HEIGHT;
    return Drawing.svg(Drawing.chart(plot, said.unit()), said.title(), width, height);
  }

  private static Color color(int part) {
    return switch (part) {
      case 0 -> Ink.FIRST.color();
      case 1 -> Ink.HATCH.color();
      case 2 -> Ink.FOURTH.color();
      default -> Ink.SOFT.color();
    };
  }
}
