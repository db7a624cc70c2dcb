package org.tapeline.inventory.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.Range;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/** Hatched bars, a line for the band, a diamond for the mark. */
final class BarsDrawing {
  private static final Shape MARK = ShapeUtils.createDiamond(7);

  private BarsDrawing() {}

  static String svg(BandedBars said, boolean phone) {
    CategoryPlot plot = new CategoryPlot();
    plot.setOrientation(phone ? PlotOrientation.HORIZONTAL : PlotOrientation.VERTICAL);
    CategoryAxis across = Drawing.axis(new CategoryAxis());
    across.setMaximumCategoryLabelLines(3);
    across.setMaximumCategoryLabelWidthRatio(phone ? 0.35f : 1f);
    plot.setDomainAxis(across);
    NumberAxis up = Drawing.axis(new NumberAxis());
    up.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
    up.setRange(range(said.bars()));
    plot.setRangeAxis(up);
    plot.setRangeGridlinePaint(Ink.GRID.color());
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    DefaultCategoryDataset values = new DefaultCategoryDataset();
    DefaultCategoryDataset marks = new DefaultCategoryDataset();
    for (BandedBars.Bar bar : said.bars()) {
      values.addValue(bar.value(), "value", bar.label());
      bar.mark().ifPresent(mark -> marks.addValue(mark, "mark", bar.label()));
    }
    plot.setDataset(0, values);
    plot.setRenderer(0, new Bars(said.bars()));
    plot.setDataset(1, marks);
    plot.setRenderer(1, marks());
    plot.setFixedLegendItems(legend(said));
    int width = phone ? Drawing.PHONE_WIDTH : Drawing.DESK_WIDTH;
    int height = phone ? 120 + 38 * said.bars().size() : Drawing.DESK_HEIGHT;
    return Drawing.svg(Drawing.chart(plot, said.unit()), said.title(), width, height);
  }

  private static Range range(List<BandedBars.Bar> bars) {
    double most =
        bars.stream().mapToDouble(b -> Math.max(b.high(), b.mark().orElse(0))).max().orElse(1);
    double least =
        bars.stream().mapToDouble(b -> Math.min(b.low(), b.mark().orElse(0))).min().orElse(0);
    return new Range(Math.min(0, least), Math.max(1, most) * 1.05);
  }

  private static LineAndShapeRenderer marks() {
    LineAndShapeRenderer marks = new LineAndShapeRenderer(false, true);
    marks.setSeriesShape(0, MARK);
    marks.setSeriesPaint(0, Ink.SECOND.color());
    return marks;
  }

  private static LegendItemCollection legend(BandedBars said) {
    LegendItemCollection legend = new LegendItemCollection();
    Shape box = new Rectangle2D.Double(-7, -5, 14, 10);
    legend.add(
        new LegendItem(
            said.valueSaid(),
            null,
            null,
            null,
            box,
            Ink.HATCH.color(),
            Drawing.THIN,
            Ink.FIRST.color()));
    legend.add(
        new LegendItem(
            said.bandSaid(),
            null,
            null,
            null,
            new Line2D.Double(0, -6, 0, 6),
            Drawing.THICK,
            Ink.TEXT.color()));
    if (!said.markSaid().isEmpty()) {
      legend.add(new LegendItem(said.markSaid(), null, null, null, MARK, Ink.SECOND.color()));
    }
    return legend;
  }

  /** Bars that draw their band as a line over them. */
  private static final class Bars extends BarRenderer {
    private static final long serialVersionUID = 1L;

    private final transient List<BandedBars.Bar> bars;

    Bars(List<BandedBars.Bar> bars) {
      this.bars = bars;
      setBarPainter(new StandardBarPainter());
      setShadowVisible(false);
      setSeriesPaint(0, Ink.HATCH.color());
      setDrawBarOutline(true);
      setSeriesOutlinePaint(0, Ink.FIRST.color());
      setSeriesOutlineStroke(0, Drawing.THIN);
      setMaximumBarWidth(0.12);
    }

    @Override
    public void drawItem(
        Graphics2D g2,
        CategoryItemRendererState state,
        Rectangle2D area,
        CategoryPlot plot,
        CategoryAxis across,
        ValueAxis up,
        CategoryDataset data,
        int row,
        int column,
        int pass) {
      super.drawItem(g2, state, area, plot, across, up, data, row, column, pass);
      double middle =
          across.getCategoryMiddle(column, data.getColumnCount(), area, plot.getDomainAxisEdge());
      double low = up.valueToJava2D(bars.get(column).low(), area, plot.getRangeAxisEdge());
      double high = up.valueToJava2D(bars.get(column).high(), area, plot.getRangeAxisEdge());
      boolean lying = plot.getOrientation() == PlotOrientation.HORIZONTAL;
      g2.setPaint(Ink.TEXT.color());
      g2.setStroke(Drawing.THICK);
      g2.draw(line(lying, middle, low, middle, high));
      g2.draw(line(lying, middle - 6, low, middle + 6, low));
      g2.draw(line(lying, middle - 6, high, middle + 6, high));
    }

    private static Line2D line(boolean lying, double x1, double y1, double x2, double y2) {
      return lying ? new Line2D.Double(y1, x1, y2, x2) : new Line2D.Double(x1, y1, x2, y2);
    }
  }
}
