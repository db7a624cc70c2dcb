package org.tapeline.inventory.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleInsets;

/** The common look, and how a chart becomes SVG text. */
final class Drawing {
  static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
  static final BasicStroke THIN = new BasicStroke(1);
  static final BasicStroke THICK = new BasicStroke(2.5f);
  static final BasicStroke DASHED =
      new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {7, 5}, 0);

  static final int DESK_WIDTH = 760;
  static final int DESK_HEIGHT = 340;
  static final int PHONE_WIDTH = 350;
  static final int PHONE_HEIGHT = 320;

  static {
    // A server has no screen; asking for one would fail where no display is.
    System.setProperty("java.awt.headless", "true");
  }

  private Drawing() {}

  /** The unit stands above the axis: a word on its side is hard to read. */
  static JFreeChart chart(Plot plot, String unit) {
    JFreeChart chart = new JFreeChart(null, FONT, plot, true);
    chart.setBackgroundPaint(null);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    TextTitle above = new TextTitle(unit, FONT);
    above.setHorizontalAlignment(HorizontalAlignment.LEFT);
    above.setPaint(Ink.SOFT.color());
    chart.addSubtitle(0, above);
    LegendTitle legend = chart.getLegend();
    legend.setBackgroundPaint(null);
    legend.setItemFont(FONT);
    legend.setItemPaint(Ink.TEXT.color());
    legend.setItemLabelPadding(new RectangleInsets(2, 4, 2, 14));
    legend.setFrame(BlockBorder.NONE);
    return chart;
  }

  static <A extends Axis> A axis(A axis) {
    axis.setTickLabelFont(FONT);
    axis.setTickLabelPaint(Ink.TEXT.color());
    axis.setAxisLinePaint(Ink.SOFT.color());
    axis.setTickMarkPaint(Ink.SOFT.color());
    return axis;
  }

  static String svg(JFreeChart chart, String title, int width, int height) {
    String key = "c" + Integer.toHexString((title + "/" + width + "/" + height).hashCode()) + "-";
    Svg svg = new Svg(key, width, height);
    chart.draw(svg.graphics(), new Rectangle2D.Double(0, 0, width, height));
    return Ink.intoCss(svg.text(title, hatch(key)), key)
        .replaceAll("font-family:[^;]*;", "font-family:inherit;");
  }

  private static String hatch(String key) {
    return "<pattern id='"
        + key
        + "hatch' width='7' height='7' patternUnits='userSpaceOnUse'"
        + " patternTransform='rotate(45)'>"
        + "<path d='M0 0V7' style='stroke:var(--accent,#0b5563);stroke-width:5'/></pattern>";
  }
}
